package counterset.referee;

import counterset.catalogue.Catalogues;
import counterset.fixture.Problems;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Owned;
import counterset.model.Region;
import counterset.model.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/** The named problems that the referee proves: one to four supersets, small catalogues. */
final class SmallProblems {

  static final Catalogue WHOLE = Catalogues.embedded();

  private final List<SmallProblem> all = new ArrayList<>();

  static List<SmallProblem> all() {
    return Stream.of(
            SmallBodies.problems(),
            SmallWishes.problems(),
            SmallClocks.problems(),
            SmallWeights.problems())
        .flatMap(List::stream)
        .toList();
  }

  List<SmallProblem> list() {
    return all;
  }

  /** Another problem. */
  SmallProblems add(String name, int exercises, Problems problems) {
    return add(name, exercises, problems, (plain, allowed) -> plain);
  }

  /** Another problem, with wishes that name exercises by their number among those allowed. */
  SmallProblems add(
      String name,
      int exercises,
      Problems problems,
      BiFunction<Problems, List<Exercise>, Problems> wishes) {
    all.add(SmallProblem.cut(name, WHOLE, exercises, problems, wishes));
    return this;
  }

  /** A session for some regions on the express clock, with two of each equipment. */
  static Problems session(int minutes, List<Region> regions, String... equipment) {
    return Problems.of(WHOLE, regions.toArray(new Region[0]))
        .minutes(minutes)
        .owning(Stream.of(equipment).map(Problems::two).toArray(Owned[]::new));
  }

  static Problems legs(int minutes, String... equipment) {
    return session(minutes, List.of(Region.LOWER), equipment);
  }

  static Problems arms(int minutes, String... equipment) {
    return session(minutes, List.of(Region.UPPER), equipment);
  }

  static Problems core(int minutes, String... equipment) {
    return session(minutes, List.of(Region.CORE), equipment);
  }

  static Problems whole(int minutes, String... equipment) {
    return session(minutes, List.of(Region.values()), equipment);
  }

  /** Six muscle groups by name, each with a movement pattern of its own. */
  static Problems many(int minutes, String... equipment) {
    return session(minutes, List.of(Region.values()), equipment)
        .targets(
            new Target("upper-back", 2, 1),
            new Target("chest", 1, 1),
            new Target("biceps", 1, 1),
            new Target("triceps", 1, 1),
            new Target("calves", 1, 1),
            new Target("lower-back", 1, 1));
  }

  /** Seconds: the express clock with other intervals, positions and rounds. */
  static Intervals clock(int work, int between, int rest, int perSuperset, int rounds) {
    return new Intervals(10, 60, work, between, rest, 0, perSuperset, rounds);
  }
}
