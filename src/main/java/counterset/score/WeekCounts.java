package counterset.score;

import counterset.score.DayConstraint.Subject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What one constraint counts in a week. Subjects have numbers; the rows of a subject are the
 * sessions of the week, then those before it.
 */
final class WeekCounts {

  final DayConstraint constraint;
  final Rule rule;
  private final WeekFacts facts;
  private final Map<Subject, Integer> numbers = new LinkedHashMap<>();
  private final List<Subject> subjects = new ArrayList<>();
  private final int[][] apart;

  /** By day and candidate: pairs of a subject and how much it counts for it. */
  private final int[][][] ofCandidate;

  /** By subject and row. */
  final List<int[]> counts = new ArrayList<>();

  WeekCounts(DayConstraint constraint, WeekFacts facts) {
    this.constraint = constraint;
    this.rule = constraint.rule(facts.problem());
    this.facts = facts;
    constraint.wanted(facts, (subject, amount) -> number(subject));
    ofCandidate = new int[facts.days().size()][][];
    for (WeekDay day : facts.days()) {
      List<int[]> pairs = new ArrayList<>();
      day.facts().candidates().forEach(candidate -> pairs.add(pairs(day, candidate)));
      ofCandidate[day.index()] = pairs.toArray(int[][]::new);
    }
    for (EarlierDay earlier : facts.earlier()) {
      int row = facts.days().size() + earlier.index();
      constraint.ofEarlier(
          earlier, (subject, amount) -> counts.get(number(subject))[row] += amount);
    }
    apart = new int[facts.days().size()][rows()];
    for (WeekDay day : facts.days()) {
      for (int row = 0; row < rows(); row++) {
        apart[day.index()][row] = Math.abs(day.day() - dayOfRow(row));
      }
    }
  }

  private int rows() {
    return facts.days().size() + facts.earlier().size();
  }

  private int dayOfRow(int row) {
    int sessions = facts.days().size();
    return row < sessions ? facts.days().get(row).day() : facts.earlier().get(row - sessions).day();
  }

  private int number(Subject subject) {
    Integer known = numbers.get(subject);
    if (known == null) {
      known = subjects.size();
      numbers.put(subject, known);
      subjects.add(subject);
      counts.add(new int[rows()]);
    }
    return known;
  }

  private int[] pairs(WeekDay day, Candidate candidate) {
    List<Integer> pairs = new ArrayList<>();
    constraint.ofExercise(
        facts,
        day,
        candidate,
        (subject, amount) -> {
          pairs.add(number(subject));
          pairs.add(amount);
        });
    return pairs.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Pairs of a subject and how much an exercise counts for it; to be read only. */
  int[] of(int day, Candidate exercise) {
    return ofCandidate[day][exercise.index()];
  }

  int subjects() {
    return subjects.size();
  }

  Subject subject(int number) {
    return subjects.get(number);
  }

  /**
   * Counts an exercise of a day, or with a sign of -1 no longer.
   *
   * @return by how many units the constraint rises
   */
  int count(int day, Candidate exercise, int sign) {
    int more = 0;
    int[] pairs = of(day, exercise);
    for (int i = 0; i < pairs.length; i += 2) {
      more -= units(pairs[i], day);
      counts.get(pairs[i])[day] += sign * pairs[i + 1];
      more += units(pairs[i], day);
    }
    return more;
  }

  /** What a subject costs as far as it depends on one day. */
  private int units(int number, int day) {
    Subject subject = subjects.get(number);
    int[] byDay = counts.get(number);
    int units = constraint.measure(facts, subject, byDay);
    for (int row = 0; row < byDay.length; row++) {
      if (row != day) {
        units += constraint.measurePair(subject, apart[day][row], byDay[day], byDay[row]);
      }
    }
    return units;
  }

  /** What all days of a subject cost together. */
  int together(int number) {
    return constraint.measure(facts, subjects.get(number), counts.get(number));
  }

  /** What two days of a subject cost; the second may be one before the week. */
  int pair(int number, int day, int row) {
    int[] byDay = counts.get(number);
    return constraint.measurePair(subjects.get(number), apart[day][row], byDay[day], byDay[row]);
  }
}
