package counterset.training;

import java.util.List;

/**
 * The 2-for-2 rule: when two or more repetitions over the goal are done in the last set of two
 * consecutive sessions, the load goes up in the next one (Baechle and Earle, in the NSCA's
 * Essentials of Strength Training and Conditioning).
 */
public final class TwoForTwo {

  /**
   * The goal where the coach has none: the upper end of 8 to 12 repetitions (Garber CE et al., Med
   * Sci Sports Exerc 2011;43(7):1334-1359, table 2).
   */
  public static final int GOAL = 12;

  private static final int OVER = 2;
  private static final int SESSIONS = 2;

  private TwoForTwo() {}

  /** The repetitions that count as two over. */
  public static int enough(int goal) {
    return goal + OVER;
  }

  /**
   * Whether the load goes up.
   *
   * @param lastSets the repetitions of the last set of each session with this load, oldest first
   */
  public static boolean isMet(int goal, List<Integer> lastSets) {
    int sessions = lastSets.size();
    return sessions >= SESSIONS
        && lastSets.subList(sessions - SESSIONS, sessions).stream()
            .allMatch(reps -> reps >= enough(goal));
  }
}
