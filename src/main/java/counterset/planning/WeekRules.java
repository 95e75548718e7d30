package counterset.planning;

import counterset.model.WeekProblem.SetRange;

/**
 * What the constraints of a week count by. Days are counted between sessions that start at the same
 * time of day: two sessions on neighbouring days are 24 h apart.
 */
public final class WeekRules {

  /** Direct sets of a muscle group from which a session asks it for recovery. */
  public static final int RECOVERY_SETS = 3;

  /**
   * On how many days of a week a target is to be trained at least (Bull et al., WHO 2020 guidelines
   * on physical activity and sedentary behaviour, Br J Sports Med 54 (2020) 1451-1462).
   */
  public static final int DAYS = 2;

  /**
   * Hours of rest for a muscle group (Garber et al., ACSM position stand, Med Sci Sports Exerc 43
   * (2011) 1334-1359).
   */
  private static final int RECOVERY_HOURS = 48;

  private static final int HOURS_A_DAY = 24;
  private static final int FRESH_AFTER_DAYS = 14;
  private static final int EXERCISE_POINTS = 12;
  private static final int FAMILY_POINTS = 4;

  private WeekRules() {}

  /** Whether sessions so many days apart, at least 0, leave a muscle group less rest than 48 h. */
  public static boolean isRecoveryShort(int daysApart) {
    return daysApart * HOURS_A_DAY < RECOVERY_HOURS;
  }

  /**
   * What the same exercise costs in sessions so many days apart: 12 for less than 14, then nothing
   * (common practice, no source). Within a week that is every repetition; in a block an exercise
   * rests a week and may come again in the next but one.
   */
  public static int exercisePoints(int daysApart) {
    return daysApart < FRESH_AFTER_DAYS ? EXERCISE_POINTS : 0;
  }

  /**
   * What the same family costs in sessions so many days apart: 4 on neighbouring days, else nothing
   * (common practice, no source).
   */
  public static int familyPoints(int daysApart) {
    return daysApart <= 1 ? FAMILY_POINTS : 0;
  }

  /** Half sets by which a week is outside a range, at least 0. */
  public static int halfSetsOutside(SetRange range, int halfSets) {
    return Math.max(0, Math.max(2 * range.least() - halfSets, halfSets - 2 * range.most()));
  }
}
