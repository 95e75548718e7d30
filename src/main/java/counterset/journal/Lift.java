package counterset.journal;

/**
 * One set with a load.
 *
 * @param exercise its id
 * @param kg the mass of one piece, above 0
 * @param reps repetitions, of one side where the exercise has two, at least 1
 * @param set from 1, in the order done
 */
public record Lift(String exercise, double kg, int reps, int set) {}
