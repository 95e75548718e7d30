/**
 * The objective, stated once: each constraint with its weight, what it measures in its scope and
 * its words; the facts of a problem that they measure; and the kernel that walks the scopes.
 *
 * <p>{@link counterset.score.Ledger} and {@link counterset.score.WeekLedger} write down every
 * match; {@link counterset.score.SessionScore}, {@link counterset.score.TrackScore} and {@link
 * counterset.score.WeekScore} add up the same for a search. Points are whole numbers on three
 * levels, never traded for each other. Depends on {@code model} and {@code timeline}.
 */
package counterset.score;
