package counterset.quality;

import counterset.model.Exercise;
import counterset.model.MovementPattern;
import counterset.score.Candidate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What can be counted of a session, for tables: shares of the places in 100, and counts. */
record Features(Map<String, Double> values, Map<String, Integer> patterns) {

  private static final int STAPLE = 3;

  static Features of(Judged session) {
    Map<String, Double> values = new LinkedHashMap<>();
    values.put("staples", share(session, it -> it.merit().standing() == STAPLE));
    values.put("known", share(session, it -> it.merit().standing() == Exercise.KNOWN));
    values.put("last resorts", share(session, it -> it.merit().standing() == Exercise.LAST_RESORT));
    values.put("easy", share(session, it -> !it.merit().isWorking()));
    values.put("without load", share(session, it -> !it.loaded()));
    values.put("could be loaded", share(session, it -> it.merit().couldBeLoaded()));
    values.put("off target", share(session, it -> it.merit().offTarget()));
    values.put("one-sided", share(session, Candidate::unilateral));
    values.put("floor", share(session, Candidate::floor));
    values.put("floor blocks", (double) blocks(session.places()));
    values.put("twins", (double) twins(session.distinct()));
    return new Features(values, patterns(session));
  }

  static double share(Judged session, Predicate<Candidate> which) {
    List<Candidate> places = session.places();
    return 100.0 * places.stream().filter(which).count() / Math.max(1, places.size());
  }

  private static int blocks(List<Candidate> places) {
    int blocks = 0;
    boolean down = false;
    for (Candidate exercise : places) {
      blocks += exercise.floor() && !down ? 1 : 0;
      down = exercise.floor();
    }
    return blocks;
  }

  /** Exercises beyond the first of a family. */
  private static long twins(List<Candidate> exercises) {
    return exercises.size() - exercises.stream().map(Candidate::family).distinct().count();
  }

  private static Map<String, Integer> patterns(Judged session) {
    Map<String, Integer> counts = new TreeMap<>();
    session.places().forEach(it -> counts.merge(pattern(session, it), 1, Integer::sum));
    return counts;
  }

  static String pattern(Judged session, Candidate exercise) {
    Optional<MovementPattern> pattern =
        session.facts().catalogue().wants().patternOf(exercise.exercise());
    return pattern.map(MovementPattern::id).orElse(exercise.exercise().pattern());
  }

  String patternWords() {
    return patterns.entrySet().stream()
        .map(it -> it.getKey() + " " + it.getValue())
        .collect(Collectors.joining(", "));
  }
}
