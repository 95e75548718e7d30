package counterset.bench;

import java.util.LinkedHashMap;
import java.util.Map;

/** The best points that anything in this run has found, by problem. */
final class BestKnown {

  private final Map<String, Points> best = new LinkedHashMap<>();

  void add(String problem, Points points) {
    best.merge(problem, points, Points::orBetter);
  }

  Points of(String problem) {
    if (!best.containsKey(problem)) {
      throw new IllegalStateException("Nothing is known of " + problem + " yet.");
    }
    return best.get(problem);
  }
}
