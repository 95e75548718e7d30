/**
 * The score of a session in one straight pass, fast enough to drive the search.
 *
 * <p>It says the same as the constraint streams of {@code planning.constraints}, which are the specification; tests hold
 * the two equal.
 */
package counterset.planning.scoring;
