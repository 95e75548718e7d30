package counterset.journal;

/**
 * How often a muscle group was trained, whether it was a target or not.
 *
 * @param muscle its id
 * @param direct sets in which it is a primary muscle group
 * @param indirect sets in which it helps
 */
public record MuscleSets(String muscle, int direct, int indirect) {}
