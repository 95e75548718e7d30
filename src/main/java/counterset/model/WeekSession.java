package counterset.model;

import java.time.DayOfWeek;

/**
 * One session of a week, as it is asked for.
 *
 * @param problem whose {@code keep} holds what is kept from an earlier plan
 */
public record WeekSession(DayOfWeek day, Problem problem) {}
