package counterset.planning.scoring;

import counterset.planning.Candidate;
import counterset.planning.EarlierDay;
import counterset.planning.WeekDay;
import counterset.planning.WeekFacts;
import counterset.planning.WeekPlace;
import counterset.planning.WeekRules;
import counterset.planning.WeekSolution;
import counterset.planning.WeekTarget;
import counterset.planning.constraints.WeekConstraint;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntUnaryOperator;

/** Writes down every match of the constraints between the sessions of a week. */
public final class WeekLedger {

  /** Stands for a session before the week. */
  public static final int EARLIER = -1;

  private final WeekFacts facts;
  private final List<Done> days = new ArrayList<>();
  private final List<Entry> entries = new ArrayList<>();

  private WeekLedger(WeekSolution solution) {
    facts = solution.getFacts();
    for (WeekDay day : facts.days()) {
      days.add(new Done(day, occurrences(solution, day)));
    }
  }

  /** All matches of a week, in a fixed order: by constraint, then by session. */
  public static List<Entry> of(WeekSolution solution) {
    WeekLedger ledger = new WeekLedger(solution);
    ledger.frequency();
    ledger.recovery();
    ledger.volume();
    ledger.repeats(Done::roots, WeekRules::exercisePoints, EarlierDay::roots);
    ledger.repeats(Done::families, WeekRules::familyPoints, EarlierDay::families);
    return List.copyOf(ledger.entries);
  }

  /** What each session gives a target, in half sets, direct ones counted as two. */
  public static List<Integer> halfSetsByDay(WeekSolution solution, WeekTarget target) {
    return new WeekLedger(solution)
        .days.stream().map(day -> day.halfSets(target.muscle())).toList();
  }

  /** On how many days of the week a target is trained directly. */
  public static int days(WeekSolution solution, WeekTarget target) {
    return new WeekLedger(solution).daysTrained(target);
  }

  private static List<Candidate> occurrences(WeekSolution solution, WeekDay day) {
    List<Candidate> work = new ArrayList<>();
    Set<String> sides = new LinkedHashSet<>();
    for (WeekPlace place : solution.getPlaces()) {
      Candidate candidate = place.getCandidate();
      if (place.getDay() == day
          && candidate != null
          && (!candidate.unilateral()
              || sides.add(place.getSuperset() + candidate.exercise().id()))) {
        work.add(candidate);
      }
    }
    return work;
  }

  private void frequency() {
    for (WeekTarget target : facts.targets()) {
      int missing = WeekRules.DAYS - daysTrained(target);
      if (target.onSeveralDays() && missing > 0) {
        List<Integer> trained =
            days.stream()
                .filter(day -> day.directSets(target.muscle()) > 0)
                .map(Done::index)
                .toList();
        add(WeekConstraint.WEEK_FREQUENCY, missing, trained, target.muscle());
      }
    }
  }

  private int daysTrained(WeekTarget target) {
    return (int) days.stream().filter(day -> day.directSets(target.muscle()) > 0).count();
  }

  private void recovery() {
    for (String muscle : facts.catalogue().muscles().keySet()) {
      for (Done day : days) {
        if (day.directSets(muscle) >= WeekRules.RECOVERY_SETS) {
          for (Done later : days.subList(day.index() + 1, days.size())) {
            if (later.directSets(muscle) >= WeekRules.RECOVERY_SETS
                && WeekRules.isRecoveryShort(day.apart(later))) {
              add(WeekConstraint.RECOVERY_SHORT, 1, List.of(day.index(), later.index()), muscle);
            }
          }
          for (EarlierDay before : facts.earlier()) {
            if (before.directSets().getOrDefault(muscle, 0) >= WeekRules.RECOVERY_SETS
                && WeekRules.isRecoveryShort(day.day().day() - before.day())) {
              add(WeekConstraint.RECOVERY_SHORT, 1, List.of(EARLIER, day.index()), muscle);
            }
          }
        }
      }
    }
  }

  private void volume() {
    for (WeekTarget target : facts.targets()) {
      int all = days.stream().mapToInt(day -> day.halfSets(target.muscle())).sum();
      int outside = WeekRules.halfSetsOutside(target.range(), all);
      if (outside > 0) {
        List<Integer> giving =
            days.stream()
                .filter(day -> day.halfSets(target.muscle()) > 0)
                .map(Done::index)
                .toList();
        add(WeekConstraint.WEEKLY_VOLUME, outside, giving, target.muscle());
      }
    }
  }

  private void repeats(
      Function<Done, Set<String>> used,
      IntUnaryOperator pointsByDaysApart,
      Function<EarlierDay, Set<String>> usedBefore) {
    for (Done day : days) {
      for (String subject : used.apply(day)) {
        for (Done later : days.subList(day.index() + 1, days.size())) {
          if (used.apply(later).contains(subject)) {
            int points = pointsByDaysApart.applyAsInt(day.apart(later));
            add(WeekConstraint.WEEK_REPEATED, points, List.of(day.index(), later.index()), subject);
          }
        }
        for (EarlierDay before : facts.earlier()) {
          if (usedBefore.apply(before).contains(subject)) {
            int points = pointsByDaysApart.applyAsInt(day.day().day() - before.day());
            add(WeekConstraint.WEEK_REPEATED, points, List.of(EARLIER, day.index()), subject);
          }
        }
      }
    }
  }

  private void add(WeekConstraint constraint, int amount, List<Integer> sessions, String subject) {
    if (amount > 0) {
      entries.add(new Entry(constraint, amount, sessions, subject));
    }
  }

  /**
   * A match.
   *
   * @param amount units of the constraint's weight, at least 1
   * @param sessions their numbers, from 0, or {@link #EARLIER}
   * @param subject the muscle group, the exercise that all variants share, or the family
   */
  public record Entry(
      WeekConstraint constraint, int amount, List<Integer> sessions, String subject) {}

  /** What one session does. */
  private record Done(WeekDay day, List<Candidate> work) {

    int index() {
      return day.index();
    }

    int apart(Done other) {
      return Math.abs(day.day() - other.day.day());
    }

    int directSets(String muscle) {
      return rounds()
          * (int) work.stream().filter(c -> c.exercise().primary().contains(muscle)).count();
    }

    int halfSets(String muscle) {
      long indirect =
          work.stream()
              .filter(
                  c ->
                      !c.exercise().primary().contains(muscle)
                          && c.exercise().secondary().contains(muscle))
              .count();
      return 2 * directSets(muscle) + rounds() * (int) indirect;
    }

    private int rounds() {
      return day.facts().clock().rounds();
    }

    Set<String> roots() {
      Set<String> roots = new LinkedHashSet<>();
      work.forEach(c -> roots.add(c.exercise().root()));
      return roots;
    }

    Set<String> families() {
      Set<String> families = new LinkedHashSet<>();
      work.forEach(c -> families.add(c.exercise().family()));
      return families;
    }
  }
}
