package counterset.score;

import counterset.planning.Candidate;
import counterset.planning.SessionFacts;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What one {@link OrderConstraint} costs, by counting the classes that came before each place. */
final class OrderSum {

  private final Rule rule;
  private final int[] classOf;
  private final int[][] units;
  private final int[] before;
  private int points;

  private OrderSum(SessionFacts facts, OrderConstraint constraint, Rule rule) {
    this.rule = rule;
    classOf = facts.candidates().stream().mapToInt(constraint::classOf).toArray();
    units = new int[constraint.classes()][constraint.classes()];
    for (int earlier = 0; earlier < units.length; earlier++) {
      for (int later = 0; later < units.length; later++) {
        units[later][earlier] = constraint.measure(earlier, later);
      }
    }
    before = new int[units.length];
  }

  /** Those of all such constraints that are not switched off. */
  static List<OrderSum> of(SessionFacts facts) {
    Rules<OrderConstraint> rules = Rules.weighed(OrderConstraint.class, facts);
    List<OrderSum> sums = new ArrayList<>();
    for (int i = 0; i < rules.size(); i++) {
      sums.add(new OrderSum(facts, rules.constraint(i), rules.rule(i)));
    }
    return sums;
  }

  /** Whether it makes a difference if one exercise stands in the place of another. */
  boolean differs(Candidate one, Candidate other) {
    return one == null || other == null || classOf[one.index()] != classOf[other.index()];
  }

  /**
   * Adds what a session costs, and remembers it.
   *
   * @param counted the exercises that count by place, null where there is none
   */
  void compute(Candidate[] counted, Sums sums) {
    points = points(counted);
    sums.add(rule.level(), points);
  }

  /** Adds what another session costs more. */
  void tryOut(Candidate[] counted, Sums sums) {
    sums.add(rule.level(), points(counted) - points);
  }

  private int points(Candidate[] counted) {
    Arrays.fill(before, 0);
    int sum = 0;
    for (Candidate exercise : counted) {
      if (exercise != null) {
        int own = classOf[exercise.index()];
        int[] row = units[own];
        for (int earlier = 0; earlier < row.length; earlier++) {
          sum += row[earlier] * before[earlier];
        }
        before[own]++;
      }
    }
    return rule.perUnit() * sum;
  }
}
