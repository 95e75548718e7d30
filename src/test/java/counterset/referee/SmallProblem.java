package counterset.referee;

import counterset.fixture.Problems;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/** A problem so small that the referee can prove its optimum, with a catalogue of its own. */
record SmallProblem(String name, Problem problem, Catalogue catalogue) {

  /**
   * Cuts a catalogue to size. What trains a target of the problem is taken in the order of the
   * catalogue at even distances: so many exercises that the client may do, and a quarter as many
   * that break a rule. Warm-up and cool-down moves all stay.
   *
   * @param wishes added to the problem once it is known which exercises there are: it is given
   *     those that the client may do
   */
  static SmallProblem cut(
      String name,
      Catalogue whole,
      int size,
      Problems problems,
      BiFunction<Problems, List<Exercise>, Problems> wishes) {
    Rules rules = new Rules(problems.problem(), whole);
    List<Exercise> trains =
        whole.exercises(Part.MAIN).stream().filter(rules::trainsATarget).toList();
    List<Exercise> allowed = spread(trains.stream().filter(rules::allow).toList(), size);
    List<Exercise> kept = new ArrayList<>(allowed);
    kept.addAll(spread(trains.stream().filter(e -> !rules.allow(e)).toList(), size / 4));
    kept.addAll(whole.exercises(Part.WARM_UP));
    kept.addAll(whole.exercises(Part.COOL_DOWN));
    Catalogue catalogue =
        Catalogue.of(
            List.copyOf(whole.muscles().values()),
            List.copyOf(whole.equipment().values()),
            List.copyOf(whole.limitations().values()),
            whole.exercises().values().stream().filter(kept::contains).toList(),
            whole.wants());
    return new SmallProblem(name, wishes.apply(problems, allowed).problem(), catalogue);
  }

  private static List<Exercise> spread(List<Exercise> all, int size) {
    int count = Math.min(size, all.size());
    return IntStream.range(0, count).mapToObj(i -> all.get(i * all.size() / count)).toList();
  }

  @Override
  public String toString() {
    return name;
  }
}
