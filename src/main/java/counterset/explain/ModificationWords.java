package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Plan;
import counterset.model.Side;
import counterset.model.Track;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What is said to those who do something else than the others; nothing without tracks. */
public final class ModificationWords {

  private final Plan plan;
  private final Modifications modifications;
  private final TrackWords tracks;

  /** The words for the tracks of a plan. */
  public ModificationWords(Plan plan, Catalogue catalogue) {
    this.plan = plan;
    this.modifications = new Modifications(plan);
    this.tracks = new TrackWords(catalogue);
  }

  /**
   * In a work interval: {@code Sore knees: Glute bridge instead.} One sentence for those who do the
   * same; the second side needs none.
   */
  public List<String> during(Interval work) {
    Map<String, List<Track>> groups = new LinkedHashMap<>();
    if (work.side().filter(side -> side == Side.RIGHT).isEmpty()) {
      for (Modifications.Shown shown : modifications.of(work)) {
        String side = WorkWords.side(shown.side()).map(words -> ", " + words).orElse("");
        groups
            .computeIfAbsent(shown.exercise().name() + " instead" + side, text -> new ArrayList<>())
            .add(shown.track());
      }
    }
    return sentences(groups);
  }

  /** In a warm-up or a cool-down: {@code Sore knees: Heel peel instead.} */
  List<String> duringMove(Interval move) {
    Map<String, List<Track>> groups = new LinkedHashMap<>();
    for (Track track : plan.tracks()) {
      Interval own = modifications.asDoneBy(track, move);
      if (!own.exercise().equals(move.exercise())) {
        String text =
            own.exercise().map(other -> other.name() + " instead").orElse("leave this one out");
        groups.computeIfAbsent(text, key -> new ArrayList<>()).add(track);
      }
    }
    return sentences(groups);
  }

  /** Before a superset: {@code Sore knees: Glute bridge instead of Goblet squat.} */
  List<String> before(Interval first) {
    List<Interval> work =
        plan.timeline().stream()
            .filter(interval -> interval.kind() == IntervalKind.WORK)
            .filter(interval -> isOf(interval, first))
            .toList();
    Map<String, List<Track>> groups = new LinkedHashMap<>();
    for (Track track : plan.tracks()) {
      Map<Exercise, Exercise> instead = new LinkedHashMap<>();
      for (Interval interval : work) {
        Exercise exercise = interval.exercise().orElseThrow();
        Exercise other = modifications.asDoneBy(track, interval).exercise().orElseThrow();
        if (!other.equals(exercise)) {
          instead.putIfAbsent(exercise, other);
        }
      }
      if (!instead.isEmpty()) {
        long exercises = work.stream().map(Interval::exercise).distinct().count();
        groups
            .computeIfAbsent(text(instead, instead.size() == exercises), text -> new ArrayList<>())
            .add(track);
      }
    }
    return sentences(groups);
  }

  private static boolean isOf(Interval interval, Interval first) {
    return interval.at().orElseThrow().superset() == first.at().orElseThrow().superset();
  }

  private static String text(Map<Exercise, Exercise> instead, boolean all) {
    return all
        ? instead.values().stream().map(Exercise::name).collect(Collectors.joining(", then "))
            + " instead"
        : instead.entrySet().stream()
            .map(pair -> pair.getValue().name() + " instead of " + pair.getKey().name())
            .collect(Collectors.joining(", "));
  }

  private List<String> sentences(Map<String, List<Track>> groups) {
    List<String> sentences = new ArrayList<>();
    groups.forEach(
        (text, who) -> {
          String names = who.stream().map(tracks::of).collect(Collectors.joining(" or "));
          sentences.add(English.capital(names) + ": " + text + ".");
        });
    return sentences;
  }
}
