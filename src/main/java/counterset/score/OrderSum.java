package counterset.score;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What one {@link OrderConstraint} costs, by counting the classes that came before each place. */
final class OrderSum {

  private final Rule rule;
  private final int[] classOf;
  private final int[][] costs;
  private final int[] before;
  private int units;

  private OrderSum(SessionFacts facts, OrderConstraint constraint, Rule rule) {
    this.rule = rule;
    classOf = facts.candidates().stream().mapToInt(constraint::classOf).toArray();
    costs = new int[constraint.classes()][constraint.classes()];
    for (int earlier = 0; earlier < costs.length; earlier++) {
      for (int later = 0; later < costs.length; later++) {
        costs[later][earlier] = constraint.measure(earlier, later);
      }
    }
    before = new int[costs.length];
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

  /** Begins with a session of which nothing is there. */
  void clear() {
    units = 0;
  }

  /**
   * Adds what another session costs more.
   *
   * @param counted the exercises that count by place, null where there is none
   * @param stays whether what comes next starts from there
   */
  void change(Candidate[] counted, boolean stays, Sums sums) {
    int now = units(counted);
    sums.add(rule, now - units);
    units = stays ? now : units;
  }

  private int units(Candidate[] counted) {
    Arrays.fill(before, 0);
    int sum = 0;
    for (Candidate exercise : counted) {
      if (exercise != null) {
        int own = classOf[exercise.index()];
        int[] row = costs[own];
        for (int earlier = 0; earlier < row.length; earlier++) {
          sum += row[earlier] * before[earlier];
        }
        before[own]++;
      }
    }
    return sum;
  }
}
