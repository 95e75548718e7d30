package counterset.score;

import java.util.Map;
import java.util.Set;

/**
 * A session that was done before the week.
 *
 * @param index its number in the problem, from 0
 * @param day below 0; -1 is the Sunday before
 * @param roots what all variants of each of its exercises share
 * @param families of its exercises; none of one that the catalogue does not know
 * @param directSets by muscle group
 */
public record EarlierDay(
    int index, int day, Set<String> roots, Set<String> families, Map<String, Integer> directSets) {}
