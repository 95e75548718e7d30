/**
 * A folder of problems on its way: in which order, what came of each file, and what is finished and
 * need not be done again.
 *
 * <p>Knows nothing of planning. Lengths in seconds, minutes where named. May depend on {@code
 * counterset.model}, {@code counterset.json} and Jackson's trees.
 */
package counterset.batch;
