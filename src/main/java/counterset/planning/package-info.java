/**
 * The planning problem as Timefold sees it: places to fill, candidates to fill them with, and the
 * way back to the model.
 *
 * <p>One planning entity per position, because that keeps the value range as small as the catalogue
 * and serves pins; moves change whole supersets. Every time comes from {@code timeline}. Depends on
 * {@code model}, {@code timeline} and Timefold.
 */
package counterset.planning;
