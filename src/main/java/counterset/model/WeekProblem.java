package counterset.model;

import java.util.List;
import java.util.Map;

/**
 * What is asked of a week.
 *
 * @param sessions by day, at most one a day, from 1 to 7
 * @param earlier what was done before the week began, latest last; it counts for recovery and
 *     variety, not for the sets and days of this week
 * @param setRanges the weekly sets that each target is to have, by muscle; the default range where
 *     there is none
 * @param recoveryIsRule whether too short a recovery breaks the plan instead of costing points
 * @param weights of the constraints of the week, by id, where they differ from the default
 */
public record WeekProblem(
    String title,
    List<WeekSession> sessions,
    List<EarlierSession> earlier,
    Map<String, SetRange> setRanges,
    boolean recoveryIsRule,
    Map<String, Integer> weights,
    long seed) {

  public WeekProblem {
    sessions = List.copyOf(sessions);
    earlier = List.copyOf(earlier);
    setRanges = Ordered.map(setRanges);
    weights = Ordered.map(weights);
  }

  /** The same week with other sessions. */
  public WeekProblem withSessions(List<WeekSession> others) {
    return with(others, earlier, seed);
  }

  /** The same week with another seed, in all its sessions too. */
  public WeekProblem withSeed(long other) {
    return with(
        sessions.stream()
            .map(it -> new WeekSession(it.day(), it.problem().withSeed(other)))
            .toList(),
        earlier,
        other);
  }

  /** The same week with another seed, but not for its sessions. */
  public WeekProblem withOwnSeed(long other) {
    return with(sessions, earlier, other);
  }

  /** The same week after other sessions. */
  public WeekProblem after(List<EarlierSession> others) {
    return with(sessions, others, seed);
  }

  private WeekProblem with(List<WeekSession> days, List<EarlierSession> done, long other) {
    return new WeekProblem(title, days, done, setRanges, recoveryIsRule, weights, other);
  }

  /**
   * A session that was done before.
   *
   * @param daysBeforeMonday of the week, at least 1
   * @param exercises their ids
   * @param directSets by muscle group
   */
  public record EarlierSession(
      int daysBeforeMonday, List<String> exercises, Map<String, Integer> directSets) {

    public EarlierSession {
      exercises = List.copyOf(exercises);
      directSets = Ordered.map(directSets);
    }
  }

  /**
   * Weekly sets, direct ones counted whole and indirect ones half.
   *
   * @param least at least 0
   * @param most at least {@code least}
   */
  public record SetRange(int least, int most) {

    /**
     * 4 to 12 sets: at least 4 are worth while (Iversen et al., "No time to lift?", Sports Med 51
     * (2021) 2079-2095), and more give ever less (Pelland et al., SportRxiv 2024, who also count
     * indirect sets by half); where to stop is common practice, no source.
     */
    public static final SetRange DEFAULT = new SetRange(4, 12);

    public SetRange {
      if (least < 0 || most < least) {
        throw new IllegalArgumentException(
            "A range of sets (" + least + " to " + most + ") starts at 0 or more and goes up.");
      }
    }
  }

  /** The weekly sets that a muscle is to have. */
  public SetRange range(String muscle) {
    return setRanges.getOrDefault(muscle, SetRange.DEFAULT);
  }
}
