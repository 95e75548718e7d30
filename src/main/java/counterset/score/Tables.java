package counterset.score;

import counterset.score.CountConstraint.Source;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What the constraints of a problem say of each exercise and each count by itself, asked once and
 * laid out for a search. Constraints that are switched off are left out. Shared by all threads.
 */
final class Tables {

  /**
   * By candidate: what it costs once a superset, and once a place; hard, medium and soft points.
   */
  final int[][] ofExercise;

  final int[][] ofPosition;

  /** By candidate: pairs of a tag and an amount, once a superset, and once a place. */
  final int[][] exerciseTags;

  final int[][] positionTags;

  /** Constraints that count supersets or steps, and the tag of each. */
  final List<CountConstraint> supersetCounts = new ArrayList<>();

  final List<CountConstraint> stepCounts = new ArrayList<>();
  final int[] supersetTags;
  final int[] stepTags;

  /** By tag: its level, and where in {@link #points} its row has what a count of 0 costs. */
  final Level[] level;

  final int[] none;

  /** Points by count, one row a tag. */
  final int[] points;

  /** The tables of a problem, the same for all who ask. */
  static Tables of(SessionFacts facts) {
    return facts.workedOut(Tables.class, Tables::new);
  }

  private Tables(SessionFacts facts) {
    int candidates = facts.candidates().size();
    ofExercise = new int[candidates][Level.values().length];
    ofPosition = new int[candidates][Level.values().length];
    Rules<PlaceConstraint> places = Rules.weighed(PlaceConstraint.class, facts);
    for (Candidate candidate : facts.candidates()) {
      for (int i = 0; i < places.size(); i++) {
        int[][] table = places.constraint(i).isPerPosition() ? ofPosition : ofExercise;
        table[candidate.index()][places.rule(i).level().ordinal()] +=
            places.rule(i).perUnit() * places.constraint(i).measure(candidate);
      }
    }
    Rules<CountConstraint> counts = Rules.weighed(CountConstraint.class, facts);
    List<List<Integer>> byExercise = lists(candidates);
    List<List<Integer>> byPosition = lists(candidates);
    List<Integer> bySuperset = new ArrayList<>();
    List<Integer> byStep = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < counts.size(); i++) {
      CountConstraint constraint = counts.constraint(i);
      int base = rows.size();
      switch (constraint.source()) {
        case EXERCISES -> exercises(constraint, facts, base, byExercise);
        case POSITIONS -> positions(constraint, facts, base, byPosition);
        case SUPERSETS -> {
          supersetCounts.add(constraint);
          bySuperset.add(base);
        }
        case STEPS -> {
          stepCounts.add(constraint);
          byStep.add(base);
        }
      }
      rows.addAll(rows(constraint, counts.rule(i), facts));
    }
    exerciseTags = arrays(byExercise);
    positionTags = arrays(byPosition);
    supersetTags = array(bySuperset);
    stepTags = array(byStep);
    level = rows.stream().map(Row::level).toArray(Level[]::new);
    none = new int[rows.size()];
    points = rows.stream().map(Row::points).flatMapToInt(Arrays::stream).toArray();
    int start = 0;
    for (int tag = 0; tag < none.length; tag++) {
      none[tag] = start - rows.get(tag).least();
      start += rows.get(tag).points().length;
    }
  }

  private static void exercises(
      CountConstraint constraint, SessionFacts facts, int base, List<List<Integer>> pairs) {
    for (Candidate candidate : facts.candidates()) {
      List<Integer> own = pairs.get(candidate.index());
      constraint.ofExercise(
          facts,
          candidate,
          (tag, amount) -> {
            own.add(base + tag);
            own.add(amount);
          });
    }
  }

  /** By candidate: pairs of a tag of one constraint and an amount. */
  static int[][] tags(CountConstraint constraint, SessionFacts facts) {
    List<List<Integer>> pairs = lists(facts.candidates().size());
    exercises(constraint, facts, 0, pairs);
    return arrays(pairs);
  }

  private static void positions(
      CountConstraint constraint, SessionFacts facts, int base, List<List<Integer>> pairs) {
    for (Candidate candidate : facts.candidates()) {
      int amount = constraint.ofPosition(candidate);
      if (amount != 0) {
        pairs.get(candidate.index()).add(base);
        pairs.get(candidate.index()).add(amount);
      }
    }
  }

  private record Row(Level level, int least, int[] points) {}

  private static List<Row> rows(CountConstraint constraint, Rule rule, SessionFacts facts) {
    int places = facts.supersets() * facts.perSuperset();
    int largest = 1;
    boolean negative = false;
    for (Candidate candidate : facts.candidates()) {
      int[] amounts = {
        constraint.source() == Source.POSITIONS ? constraint.ofPosition(candidate) : 0, 0
      };
      if (constraint.source() == Source.EXERCISES) {
        constraint.ofExercise(
            facts, candidate, (tag, amount) -> amounts[1] = Math.max(amounts[1], amount));
      }
      largest = Math.max(largest, Math.max(Math.abs(amounts[0]), amounts[1]));
      negative |= amounts[0] < 0;
    }
    int most =
        largest * places * (constraint.source() == Source.STEPS ? facts.clock().rounds() : 1);
    int least = negative ? -most : 0;
    List<Row> rows = new ArrayList<>();
    for (int tag = 0; tag < constraint.tags(facts); tag++) {
      int[] points = new int[most - least + 1];
      for (int i = 0; i < points.length; i++) {
        points[i] = rule.perUnit() * constraint.measure(facts, tag, least + i);
      }
      rows.add(new Row(rule.level(), least, points));
    }
    return rows;
  }

  private static List<List<Integer>> lists(int size) {
    List<List<Integer>> lists = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      lists.add(new ArrayList<>());
    }
    return lists;
  }

  private static int[][] arrays(List<List<Integer>> lists) {
    return lists.stream().map(Tables::array).toArray(int[][]::new);
  }

  private static int[] array(List<Integer> list) {
    return list.stream().mapToInt(Integer::intValue).toArray();
  }
}
