package counterset.search;

import counterset.model.Exercise;
import java.util.function.Predicate;

/**
 * Something asked for, or not to be had, that narrows the choice of exercises.
 *
 * @param words what follows {@code with} or {@code ruled out by}: {@code sore knees}, {@code no
 *     equipment}
 * @param blocks the exercises that it rules out
 */
record Wish(String words, Predicate<Exercise> blocks) {}
