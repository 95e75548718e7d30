package counterset.journal;

/**
 * How often a main exercise was done.
 *
 * @param exercise its id
 * @param sets both sides of a unilateral exercise counted once, at least 1
 */
public record ExerciseSets(String exercise, int sets) {}
