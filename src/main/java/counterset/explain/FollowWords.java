package counterset.explain;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.Superset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;

/** What else changes in a plan when the exercise at one place does. */
public final class FollowWords {

  private final Plan from;
  private final Plan to;
  private final TrackWords tracks;

  private FollowWords(Plan from, Plan to, Catalogue catalogue) {
    this.from = from;
    this.to = to;
    this.tracks = new TrackWords(catalogue);
  }

  /**
   * Clauses, such as {@code 3A becomes Goblet squat}; none if nothing else changes.
   *
   * @param at the place itself
   */
  public static List<String> of(Plan from, Plan to, At at, Catalogue catalogue) {
    FollowWords words = new FollowWords(from, to, catalogue);
    List<String> clauses = new ArrayList<>(words.places(at));
    clauses.addAll(words.modifications());
    words.moves("warm-up", from.session().warmUp(), to.session().warmUp()).ifPresent(clauses::add);
    words
        .moves("cool-down", from.session().coolDown(), to.session().coolDown())
        .ifPresent(clauses::add);
    return clauses;
  }

  private List<String> places(At at) {
    List<String> clauses = new ArrayList<>();
    for (Superset superset : to.session().supersets()) {
      for (int position = 0; position < superset.exercises().size(); position++) {
        At place = new At(superset.number(), position);
        Exercise now = superset.exercises().get(position);
        Optional<Exercise> before = standing(from, place);
        if (place.equals(at) || before.equals(Optional.of(now))) {
          continue;
        }
        if (!superset.isUnilateral()) {
          clauses.add(place + " becomes " + now.name());
        } else if (superset.number() == at.superset()) {
          secondSide(place, before).ifPresent(clauses::add);
        } else if (position == 0) {
          clauses.add(
              "superset " + superset.number() + " becomes " + now.name() + ", left then right");
        }
      }
    }
    return clauses;
  }

  /** That a one-sided exercise fills both places is no news where one stood there before. */
  private Optional<String> secondSide(At place, Optional<Exercise> before) {
    boolean asBefore = from.session().supersets().get(place.superset() - 1).isUnilateral();
    return asBefore
        ? Optional.empty()
        : Optional.of(
            "it takes "
                + place
                + " too"
                + before.map(exercise -> ", so " + exercise.name() + " goes").orElse(""));
  }

  private List<String> modifications() {
    List<String> clauses = new ArrayList<>();
    for (int track = 0; track < to.problem().tracks().size(); track++) {
      String who = "for " + tracks.of(to.problem().tracks().get(track));
      Map<At, Exercise> before = modifications(from, track);
      Map<At, Exercise> after = modifications(to, track);
      TreeSet<At> places = new TreeSet<>(before.keySet());
      places.addAll(after.keySet());
      for (At place : places) {
        Exercise now = after.get(place);
        if (!Objects.equals(before.get(place), now)) {
          clauses.add(
              who + " at " + place + ": " + (now == null ? "no modification needed" : now.name()));
        }
      }
    }
    return clauses;
  }

  private static Map<At, Exercise> modifications(Plan plan, int track) {
    List<Map<At, Exercise>> all = plan.session().modifications();
    return track < all.size() ? all.get(track) : Map.of();
  }

  private Optional<String> moves(String part, List<Exercise> before, List<Exercise> after) {
    List<String> fresh =
        after.stream().filter(move -> !before.contains(move)).map(Exercise::name).toList();
    if (before.equals(after)) {
      return Optional.empty();
    }
    return Optional.of(
        fresh.isEmpty()
            ? "the " + part + " comes in another order"
            : "new in the " + part + ": " + English.list(fresh));
  }

  private static Optional<Exercise> standing(Plan plan, At at) {
    return plan.session().supersets().get(at.superset() - 1).exercises().stream()
        .skip(at.position())
        .findFirst();
  }
}
