package counterset.model;

/**
 * How a plan was found.
 *
 * @param effort {@code quick}, {@code standard} or {@code thorough}; {@code none} for a plan that
 *     was only scored
 * @param version of this program
 * @param moves how many moves were tried; 0 for a plan that was only scored
 * @param complete whether the search ran to its end
 */
public record SolverNote(long seed, String effort, String version, long moves, boolean complete) {}
