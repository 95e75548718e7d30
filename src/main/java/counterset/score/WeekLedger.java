package counterset.score;

import counterset.score.DayConstraint.Kind;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Writes down every match of the constraints between the sessions of a week. */
public final class WeekLedger {

  /** Stands for a session before the week. */
  public static final int EARLIER = -1;

  private final WeekFacts facts;
  private final List<List<Candidate>> work = new ArrayList<>();
  private final List<Entry> entries = new ArrayList<>();

  private WeekLedger(WeekFacts facts, List<Candidate[]> sessions) {
    this.facts = facts;
    for (WeekDay day : facts.days()) {
      work.add(Group.work(sessions.get(day.index()), day.facts().perSuperset()));
    }
  }

  /**
   * All matches of a week, in the order of the constraints, then of the sessions.
   *
   * @param sessions by session, the exercises by place, null where there is none
   */
  public static List<Entry> of(WeekFacts facts, List<Candidate[]> sessions) {
    WeekLedger ledger = new WeekLedger(facts, sessions);
    for (DayConstraint constraint : Constraints.OF_WEEKS) {
      WeekCounts counts = new WeekCounts(constraint, facts);
      for (WeekDay day : facts.days()) {
        ledger.work.get(day.index()).forEach(done -> counts.count(day.index(), done, 1));
      }
      ledger.together(counts);
      for (Kind kind : Kind.values()) {
        ledger.pairs(counts, kind);
      }
    }
    return List.copyOf(ledger.entries);
  }

  /**
   * What each session gives a muscle group, in half sets, direct ones counted as two.
   *
   * @param sessions by session, the exercises by place, null where there is none
   */
  public static List<Integer> halfSetsByDay(
      WeekFacts facts, List<Candidate[]> sessions, String muscle) {
    DayConstraint volume = Constraints.weekly(WeeklyVolume.class);
    WeekLedger ledger = new WeekLedger(facts, sessions);
    List<Integer> byDay = new ArrayList<>();
    for (WeekDay day : facts.days()) {
      int[] sum = {0};
      for (Candidate done : ledger.work.get(day.index())) {
        volume.ofExercise(
            facts,
            day,
            done,
            (subject, amount) -> sum[0] += subject.id().equals(muscle) ? amount : 0);
      }
      byDay.add(sum[0]);
    }
    return byDay;
  }

  /** On how many days of the week a muscle group is trained directly. */
  public static int days(WeekFacts facts, List<Candidate[]> sessions, String muscle) {
    WeekLedger ledger = new WeekLedger(facts, sessions);
    return (int)
        ledger.work.stream()
            .filter(day -> day.stream().anyMatch(c -> c.exercise().primary().contains(muscle)))
            .count();
  }

  private void together(WeekCounts counts) {
    for (int subject = 0; subject < counts.subjects(); subject++) {
      List<Integer> days = new ArrayList<>();
      for (WeekDay day : facts.days()) {
        if (counts.counts.get(subject)[day.index()] > 0) {
          days.add(day.index());
        }
      }
      add(counts, counts.together(subject), days, subject);
    }
  }

  private void pairs(WeekCounts counts, Kind kind) {
    for (WeekDay day : facts.days()) {
      for (int subject : subjects(counts, day, kind)) {
        for (int later = day.index() + 1; later < facts.days().size(); later++) {
          int units = counts.pair(subject, day.index(), later);
          add(counts, units, List.of(day.index(), later), subject);
        }
        for (int earlier = 0; earlier < facts.earlier().size(); earlier++) {
          int units = counts.pair(subject, day.index(), facts.days().size() + earlier);
          add(counts, units, List.of(EARLIER, day.index()), subject);
        }
      }
    }
  }

  /** What of a kind a session counts for, in its order. */
  private Set<Integer> subjects(WeekCounts counts, WeekDay day, Kind kind) {
    Set<Integer> subjects = new LinkedHashSet<>();
    for (Candidate done : work.get(day.index())) {
      int[] pairs = counts.of(day.index(), done);
      for (int i = 0; i < pairs.length; i += 2) {
        if (counts.subject(pairs[i]).kind() == kind) {
          subjects.add(pairs[i]);
        }
      }
    }
    return subjects;
  }

  private void add(WeekCounts counts, int units, List<Integer> sessions, int subject) {
    if (units > 0) {
      int points = units * counts.rule.perUnit();
      String id = counts.subject(subject).id();
      entries.add(new Entry(counts.constraint, units, points, sessions, id));
    }
  }

  /**
   * A match.
   *
   * @param amount units of the constraint, at least 1
   * @param points what it adds to the score of its level
   * @param sessions their numbers, from 0, or {@link #EARLIER}
   * @param subject the id of the muscle group, of the exercise that all variants share, or of the
   *     family
   */
  public record Entry(
      DayConstraint constraint, int amount, int points, List<Integer> sessions, String subject) {}
}
