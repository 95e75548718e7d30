package counterset.report;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.Superset;
import counterset.model.Target;
import counterset.search.SessionPlanner;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** A class of three tracks, written by hand over a fixed catalogue. */
public final class ClassPlans {

  /** Sore knees; no jumping; both sore knees and no floor. */
  public static final List<Set<String>> TRACKS =
      List.of(
          Set.of("sore-knees"),
          Set.of("no-jumping"),
          new TreeSet<>(Set.of("sore-knees", "no-floor")));

  private ClassPlans() {}

  /** Every follower has something to do: on the same clock, nothing to fetch. */
  public static Plan good() {
    return score(modifications());
  }

  /** The good one with the exercises of another catalogue that has the same ids. */
  public static Plan good(Catalogue catalogue, String title) {
    Session session = good().session();
    return new SessionPlanner(catalogue, "test")
        .score(
            problem(title),
            new Session(
                again(session.warmUp(), catalogue),
                session.supersets().stream()
                    .map(it -> new Superset(it.number(), again(it.exercises(), catalogue)))
                    .toList(),
                again(session.coolDown(), catalogue),
                session.modifications().stream().map(it -> again(it, catalogue)).toList()),
            new SolverNote(1, "none", "test", 0, true));
  }

  private static List<Exercise> again(List<Exercise> exercises, Catalogue catalogue) {
    return exercises.stream().map(it -> catalogue.exercises().get(it.id())).toList();
  }

  private static Map<At, Exercise> again(Map<At, Exercise> places, Catalogue catalogue) {
    Map<At, Exercise> map = new LinkedHashMap<>();
    places.forEach((at, exercise) -> map.put(at, catalogue.exercises().get(exercise.id())));
    return map;
  }

  /** The same with other moves in the warm-up. */
  public static Plan warmUp(String... ids) {
    return score(Plans.moves(ids), modifications());
  }

  private static List<Map<At, Exercise>> modifications() {
    return List.of(good("sore-knees"), good("no-jumping"), good("no-floor+sore-knees"));
  }

  /** One modification is missing, one does not suit, one comes twice. */
  public static Plan broken() {
    Map<At, Exercise> knees = good("sore-knees");
    knees.remove(new At(1, 0));
    Map<At, Exercise> both = good("no-floor+sore-knees");
    both.put(new At(3, 0), Plans.moves("slow-mountain-climber").get(0));
    both.put(new At(3, 1), Plans.moves("standing-hip-extension").get(0));
    return score(List.of(knees, good("no-jumping"), both));
  }

  private static Map<At, Exercise> good(String track) {
    return switch (track) {
      case "sore-knees" ->
          map("1A goblet-partial-squat", "2A single-leg-hip-hinge", "3A slow-mountain-climber");
      case "no-jumping" -> map("3A slow-mountain-climber");
      default ->
          map(
              "1A goblet-partial-squat",
              "2A standing-hip-extension",
              "3A standing-crunch",
              "3B standing-glute-squeeze");
    };
  }

  private static Map<At, Exercise> map(String... places) {
    Map<At, Exercise> map = new LinkedHashMap<>();
    for (String place : places) {
      String[] words = place.split(" ");
      map.put(At.parse(words[0]).orElseThrow(), Plans.moves(words[1]).get(0));
    }
    return map;
  }

  private static Plan score(List<Map<At, Exercise>> modifications) {
    return score(Plans.moves("warm-march", "warm-heel-peel", "warm-side-step"), modifications);
  }

  private static Plan score(List<Exercise> warmUp, List<Map<At, Exercise>> modifications) {
    Session session =
        new Session(
            warmUp,
            List.of(
                superset(1, "goblet-squat", "dumbbell-romanian-deadlift"),
                superset(2, "split-squat", "split-squat"),
                superset(3, "mountain-climber", "glute-bridge")),
            List.of(),
            modifications);
    return new SessionPlanner(Plans.CATALOGUE, "test")
        .score(problem("Harbour Lane class"), session, new SolverNote(1, "none", "test", 0, true));
  }

  private static Superset superset(int number, String... ids) {
    return new Superset(number, Plans.moves(ids));
  }

  private static Problem problem(String title) {
    return Problem.builder()
        .title(title)
        .minutes(9)
        .clock(new Intervals(10, 90, 45, 0, 30, 0, 2, 1))
        .targets(
            List.of(
                new Target("quadriceps", 1, 1),
                new Target("hamstrings", 1, 1),
                new Target("gluteus-maximus", 1, 1),
                new Target("abdominals", 1, 1)))
        .equipment(List.of(Plans.owned("dumbbell", 2, 4.0, 8.0)))
        .tracks(TRACKS)
        .level(3)
        .build();
  }
}
