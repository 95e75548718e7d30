package counterset.bench;

/**
 * One line of a benchmark's table.
 *
 * @param name what was measured
 * @param measured the value with its unit
 * @param target the value to reach, with its unit; empty where nothing is asked
 * @param met whether the target is reached; true where nothing is asked
 */
public record Row(String name, String measured, String target, boolean met) {}
