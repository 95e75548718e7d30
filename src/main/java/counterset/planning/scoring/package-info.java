/**
 * The score of a session in plain Java: every match of it for the ledger, and its sum, fast enough
 * to drive the search.
 *
 * <p>Both say the same as the constraint streams of {@code planning.constraints}, which are the
 * specification; tests hold the three equal.
 */
package counterset.planning.scoring;
