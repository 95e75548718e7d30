/**
 * Runs the solver: how hard it tries, with which seeds, and which of several results wins.
 *
 * <p>Effort is counted in moves and starts, never in seconds or cores, so that a result does not
 * depend on the machine. Depends on {@code score}, {@code model}, {@code timeline} and Timefold.
 */
package counterset.search;
