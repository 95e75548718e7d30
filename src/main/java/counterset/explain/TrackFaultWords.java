package counterset.explain;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Match;
import counterset.model.Plan;
import counterset.model.Track;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What is wrong for the followers of one track. */
final class TrackFaultWords {

  private final Plan plan;
  private final Catalogue catalogue;
  private final RuleWords rules;
  private final MatchNames named;

  TrackFaultWords(Plan plan, Catalogue catalogue) {
    this.plan = plan;
    this.catalogue = catalogue;
    this.rules = new RuleWords(plan.problem(), catalogue);
    this.named = new MatchNames(plan, catalogue);
  }

  /** For whom: {@code for sore knees}; empty if it concerns everybody. */
  String who(Match match) {
    return match.track().map(name -> "for " + new TrackWords(catalogue).ofName(name)).orElse("");
  }

  /** The session that a match is about: that of the track, or that of everybody. */
  static Plan planOf(Match match, Plan plan) {
    return plan.tracks().stream()
        .filter(track -> match.track().equals(Optional.of(track.name())))
        .map(Track::plan)
        .findFirst()
        .orElse(plan);
  }

  /** An exercise that does not suit, and why what stands beside it does not help. */
  String missing(Match match) {
    Exercise exercise = named.exercise(match).orElseThrow();
    Set<String> limitations = limitations(match);
    Optional<Exercise> beside = beside(match);
    if (beside.isEmpty()) {
      return exercise.name()
          + " goes against "
          + rules.broken(exercise, limitations)
          + ", and no modification is beside it";
    }
    String name = beside.get().name() + " instead of " + exercise.name();
    limitations.addAll(plan.problem().limitations());
    String broken = rules.broken(beside.get(), limitations);
    String missing = rules.missing(beside.get());
    if (!broken.isEmpty()) {
      return name + " goes against " + broken;
    }
    if (!missing.isEmpty()) {
      return name + " needs " + missing + ", not among the equipment";
    }
    return beside.get().isUnilateral() && !exercise.isUnilateral()
        ? name + " leaves the other side out"
        : name + " is excluded, or above level " + plan.problem().level();
  }

  /** What stands beside an exercise and does not quite fit it. */
  String awkward(Match match) {
    String instead = beside(match).map(Exercise::name).orElse("The modification");
    return instead + " does not quite fit the moment of " + named.places(match);
  }

  private Optional<Exercise> beside(Match match) {
    List<String> names =
        plan.problem().tracks().stream().map(ids -> String.join("+", ids)).toList();
    int track = match.track().map(names::indexOf).orElse(-1);
    List<Map<At, Exercise>> all = new ArrayList<>(plan.session().modifications());
    return track < 0 || track >= all.size() || match.places().isEmpty()
        ? Optional.empty()
        : Optional.ofNullable(all.get(track).get(match.places().get(0)));
  }

  private Set<String> limitations(Match match) {
    Set<String> ids = new LinkedHashSet<>(List.of(match.track().orElse("").split("\\+")));
    ids.retainAll(catalogue.limitations().keySet());
    return ids;
  }
}
