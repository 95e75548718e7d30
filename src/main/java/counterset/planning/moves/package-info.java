/**
 * Moves that change whole supersets, both sides of a unilateral exercise, and the order of runs of
 * supersets.
 */
package counterset.planning.moves;
