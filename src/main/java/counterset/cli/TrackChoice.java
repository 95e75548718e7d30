package counterset.cli;

import counterset.explain.Modifications;
import counterset.json.BadRequest;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Track;
import counterset.spelling.Nearest;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Whose session is wanted: that of a track, or that of the coach.
 *
 * @param track the place of the track in the problem
 */
record TrackChoice(Optional<Integer> track) {

  /**
   * Finds a track by its name, whose limitations may be in any order.
   *
   * @throws BadRequest if the problem has no such track
   */
  static TrackChoice of(Problem problem, Optional<String> name) {
    if (name.isEmpty()) {
      return new TrackChoice(Optional.empty());
    }
    Set<String> wanted = Set.copyOf(List.of(name.get().strip().split("\\+")));
    int track = problem.tracks().indexOf(wanted);
    if (track < 0) {
      throw new BadRequest(unknown(name.get(), problem));
    }
    return new TrackChoice(Optional.of(track));
  }

  private static String unknown(String name, Problem problem) {
    List<String> names = problem.tracks().stream().map(ids -> String.join("+", ids)).toList();
    return "--track ("
        + name
        + ") is not known."
        + (names.isEmpty()
            ? " This session has no tracks. Maybe ask for \"class with sore knees\"."
            : Nearest.maybe(name, names) + " The tracks: " + String.join(", ", names) + ".");
  }

  /** The session that is wanted, as a plan that stands by itself. */
  Plan from(Plan plan) {
    return track.map(plan.tracks()::get).map(Track::plan).orElse(plan);
  }

  /**
   * The session that is wanted, as it is led. By itself the session of a track would give its
   * left-over seconds to other rests; in the class all follow one clock.
   */
  Plan asLed(Plan plan) {
    if (track.isEmpty()) {
      return plan;
    }
    Track chosen = plan.tracks().get(track.get());
    Modifications modifications = new Modifications(plan);
    return chosen
        .plan()
        .withTimeline(
            plan.timeline().stream()
                .map(interval -> modifications.asDoneBy(chosen, interval))
                .toList());
  }
}
