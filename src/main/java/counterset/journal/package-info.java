/**
 * What was done: entries, one JSON object a line, in a file that is only ever added to.
 *
 * <p>Knows how an entry is kept and where a line may have been cut short, not what follows from it;
 * that is in {@code counterset.training}. Masses in kilograms, lengths in seconds or minutes as
 * named. May depend on {@code counterset.model}, {@code counterset.json} and Jackson's trees.
 */
package counterset.journal;
