package counterset.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What a split diagram says of its longest path, held against a list of all paths. */
class SplitTest {

  private static final int TRIALS = 300;
  private static final int CANDIDATES = 5;
  private static final int PLENTY = 1_000_000;
  private static final int WEIGHT = 7;

  private final Tags tags = new Tags(CANDIDATES, 1);
  private final Prices prices = new Prices(CANDIDATES);

  @Test
  void atMostOnceLeavesOutRepeats() {
    for (int trial = 0; trial < TRIALS; trial++) {
      Diagram diagram = diagram(new Random(trial));
      boolean[] some = some(new Random(trial));
      int best = Arcs.NEVER;
      for (List<Integer> path : paths(diagram)) {
        boolean kept = path.stream().filter(arc -> some[diagram.tag[arc]]).count() <= 1;
        best = kept ? Math.max(best, points(diagram, path)) : best;
      }
      holds(trial, new AtMostOnce(diagram, some), best);
    }
  }

  @Test
  void atLeastOnceLeavesOutWhatMisses() {
    for (int trial = 0; trial < TRIALS; trial++) {
      Diagram diagram = diagram(new Random(trial));
      boolean[] some = some(new Random(trial));
      int best = Arcs.NEVER;
      for (List<Integer> path : paths(diagram)) {
        boolean kept = path.stream().anyMatch(arc -> some[diagram.tag[arc]]);
        best = kept ? Math.max(best, points(diagram, path)) : best;
      }
      holds(trial, new AtLeastOnce(diagram, some), best);
    }
  }

  @Test
  void lightBeforeChargesForAllButTheFirst() {
    int[] intensity = new int[tags.size()];
    for (int candidate = 0; candidate < CANDIDATES; candidate++) {
      intensity[tags.of(candidate, Tags.ONCE)] = 1 + candidate % 3;
    }
    for (int trial = 0; trial < TRIALS; trial++) {
      Diagram diagram = diagram(new Random(trial));
      int best = Arcs.NEVER;
      for (List<Integer> path : paths(diagram)) {
        int light = 0;
        int points = points(diagram, path);
        for (int arc : path) {
          int here = intensity[diagram.tag[arc]];
          points -= here > 1 && light > 1 ? WEIGHT * (light - 1) * (here - 1) : 0;
          light += here == 1 ? 1 : 0;
        }
        best = Math.max(best, points);
      }
      holds(trial, new LightBefore(diagram, intensity, intensity, 1, CANDIDATES * 2, WEIGHT), best);
    }
  }

  @Test
  void allPathsOfEnoughPointsStay() {
    for (int trial = 0; trial < TRIALS; trial++) {
      Random random = new Random(trial);
      Diagram diagram = diagram(random);
      int least = diagram.longest(prices) - random.nextInt(40);
      List<Integer> before = enough(diagram, least);
      assertThat(before).isNotEmpty();
      assertThat(enough(diagram.without(prices, least), least)).isEqualTo(before);
      assertThat(diagram.without(prices, diagram.longest(prices) + 1L).longest(prices))
          .isEqualTo(Arcs.NEVER);
    }
  }

  private List<Integer> enough(Diagram diagram, int least) {
    return paths(diagram).stream()
        .map(path -> points(diagram, path))
        .filter(points -> points >= least)
        .sorted()
        .toList();
  }

  private void holds(int trial, Split split, int best) {
    Diagram apart = split.apart(PLENTY);
    int longest = apart.longest(prices);
    assertThat(Math.max(Diagram.UNREACHED, longest))
        .as("trial %d", trial)
        .isEqualTo(Math.max(Diagram.UNREACHED, best));
    assertThat(Math.max(Diagram.UNREACHED, apart.without(prices, Arcs.NEVER / 2).longest(prices)))
        .as("trial %d without dead ends", trial)
        .isEqualTo(Math.max(Diagram.UNREACHED, best));
    assertThat(split.apart(0)).isNull();
  }

  private boolean[] some(Random random) {
    boolean[] some = new boolean[tags.size()];
    some[tags.of(random.nextInt(CANDIDATES), Tags.ONCE)] = true;
    some[tags.of(random.nextInt(CANDIDATES), Tags.ONCE)] = true;
    return some;
  }

  /** A few states, each with arcs from some before it, one of them at least from the last. */
  private Diagram diagram(Random random) {
    ArcList arcs = new ArcList();
    arcs.state();
    int states = 3 + random.nextInt(5);
    for (int state = 1; state < states; state++) {
      int into = 1 + random.nextInt(3);
      for (int i = 0; i < into; i++) {
        int from = i == 0 ? state - 1 : random.nextInt(state);
        int tag = tags.of(random.nextInt(CANDIDATES), Tags.ONCE);
        arcs.add(from, random.nextInt(60) - 30, random.nextInt(6) == 0 ? tags.nothing() : tag);
      }
      arcs.state();
    }
    return new Diagram(tags, arcs);
  }

  private static int points(Diagram diagram, List<Integer> path) {
    return path.stream().mapToInt(arc -> diagram.points[arc]).sum();
  }

  private static List<List<Integer>> paths(Diagram diagram) {
    List<List<Integer>> found = new ArrayList<>();
    back(diagram, diagram.states - 1, new ArrayList<>(), found);
    return found;
  }

  private static void back(
      Diagram diagram, int state, List<Integer> path, List<List<Integer>> found) {
    if (state == 0 && diagram.states > 1) {
      found.add(List.copyOf(path));
    }
    for (int arc = state == 0 ? 0 : diagram.first[state];
        state > 0 && arc < diagram.first[state + 1];
        arc++) {
      path.add(0, arc);
      back(diagram, diagram.from[arc], path, found);
      path.remove(0);
    }
  }
}
