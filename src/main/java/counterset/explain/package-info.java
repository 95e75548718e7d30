/**
 * Plans in plain sentences: what the coach says, why an exercise is where it is, what each point of
 * the score is for, what is broken and what would mend it.
 *
 * <p>Sentences are plain text on one line; those on a constraint are its own. Depends on {@code
 * score}, {@code model} and {@code timeline}; knows no file format.
 */
package counterset.explain;
