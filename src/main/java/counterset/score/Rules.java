package counterset.score;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The constraints of one scope as a problem weighs them, in order.
 *
 * @param constraints of the scope
 * @param rules of each of them
 */
record Rules<C extends Constraint>(List<C> constraints, List<Rule> rules) {

  /** All of a scope. */
  static <C extends Constraint> Rules<C> all(Class<C> scope, SessionFacts facts) {
    return of(Constraints.of(scope), facts);
  }

  /** Those of a scope that are not switched off by a weight of 0. */
  static <C extends Constraint> Rules<C> weighed(Class<C> scope, SessionFacts facts) {
    return of(
        Constraints.of(scope).stream()
            .filter(constraint -> constraint.weight(facts.problem().weights()) != 0)
            .toList(),
        facts);
  }

  private static <C extends Constraint> Rules<C> of(List<C> constraints, SessionFacts facts) {
    return new Rules<>(
        constraints, constraints.stream().map(c -> Rule.of(c, facts.problem().weights())).toList());
  }

  /** Those of them that meet a condition. */
  Rules<C> where(Predicate<C> condition) {
    List<Integer> kept =
        IntStream.range(0, size()).filter(i -> condition.test(constraint(i))).boxed().toList();
    return new Rules<>(
        kept.stream().map(this::constraint).toList(), kept.stream().map(this::rule).toList());
  }

  /** What one unit of each adds to the score. */
  int[] perUnit() {
    return rules.stream().mapToInt(Rule::perUnit).toArray();
  }

  /** The level of each. */
  Level[] levels() {
    return rules.stream().map(Rule::level).toArray(Level[]::new);
  }

  int size() {
    return constraints.size();
  }

  C constraint(int index) {
    return constraints.get(index);
  }

  Rule rule(int index) {
    return rules.get(index);
  }
}
