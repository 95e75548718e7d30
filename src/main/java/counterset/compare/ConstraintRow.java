package counterset.compare;

import counterset.model.PlanScore;
import counterset.score.Constraints;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * What one constraint makes of each plan.
 *
 * @param id of the constraint
 * @param level {@code hard}, {@code medium} or {@code soft}
 * @param topic what it is about, in a few words
 * @param points of each plan, in their order
 * @param values what is compared: the points, or the points a superset; as many; none for a plan
 *     without work
 */
public record ConstraintRow(
    String id, String level, String topic, List<Integer> points, List<OptionalDouble> values) {

  private static final List<String> LEVELS = List.of("hard", "medium", "soft");

  public ConstraintRow {
    points = List.copyOf(points);
    values = List.copyOf(values);
  }

  /** All constraints: rules, wishes, then the widest differences first. */
  public static List<ConstraintRow> of(Comparison comparison) {
    List<Compared> all = comparison.all();
    boolean whole = comparison.sameShape();
    List<ConstraintRow> rows = new ArrayList<>();
    List<PlanScore.Line> lines = all.get(0).plan().score().lines();
    for (int i = 0; i < lines.size(); i++) {
      int at = i;
      List<Integer> points =
          all.stream().map(it -> it.plan().score().lines().get(at).score()).toList();
      PlanScore.Line line = lines.get(i);
      rows.add(
          new ConstraintRow(
              line.id(),
              line.level(),
              Constraints.of(line.id()).topic(),
              points,
              IntStream.range(0, all.size())
                  .mapToObj(plan -> value(all.get(plan), line, points.get(plan), whole))
                  .toList()));
    }
    rows.sort(
        Comparator.comparing((ConstraintRow row) -> LEVELS.indexOf(row.level()))
            .thenComparing(row -> -row.spread()));
    return List.copyOf(rows);
  }

  private static OptionalDouble value(
      Compared plan, PlanScore.Line line, int points, boolean whole) {
    int supersets = plan.facts().supersets();
    if (supersets == 0) {
      return OptionalDouble.empty();
    }
    boolean divided = !whole && line.level().equals("soft");
    return OptionalDouble.of(divided ? (double) points / supersets : points);
  }

  /** Between the plan with most and the plan with least. */
  public double spread() {
    return known().max().orElse(0) - known().min().orElse(0);
  }

  /** Whether it says the same of all. */
  public boolean isEqual() {
    return known().distinct().count() <= 1;
  }

  private DoubleStream known() {
    return values.stream().flatMapToDouble(OptionalDouble::stream);
  }

  /** Whether it says nothing of any. */
  public boolean isSilent() {
    return known().allMatch(it -> it == 0);
  }
}
