/**
 * The only clock: how long a session is, when each interval starts, how long each changeover takes.
 *
 * <p>Pure functions over whole seconds. Whoever needs a time asks here: the search, the constraints
 * and the reports. Depends on {@code model}.
 */
package counterset.timeline;
