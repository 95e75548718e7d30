package counterset.score;

import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Match;
import counterset.model.Plan;
import counterset.model.Superset;
import counterset.model.TargetCoverage;
import counterset.model.Track;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * A match that is put into words.
 *
 * @param plan the session that it is of, as everybody does it
 * @param other the session that it is told apart from; the same if there is none
 * @param amount units to tell of: those of the match, or how many more of them than in the other
 *     session
 * @param isWhole whether the other session has nothing of the kind
 */
public record Told(Match match, Plan plan, Plan other, int amount, boolean isWhole, Names names) {

  /** A match by itself. */
  public static Told of(Match match, Plan plan, Names names) {
    return new Told(match, plan, plan, match.amount(), true, names);
  }

  /** The same with so many units of it. */
  public Told part(int units, boolean whole) {
    return new Told(match, plan, other, units, whole, names);
  }

  /** The same, told of everybody's session where it is about a track. */
  Told forAll() {
    Match ofAll =
        new Match(
            match.constraint(), match.amount(), match.points(), match.places(), match.subject());
    return new Told(ofAll, plan, other, amount, isWhole, names);
  }

  /** The session as those do it whom it concerns. */
  Plan own() {
    return plan.tracks().stream()
        .filter(track -> match.track().equals(Optional.of(track.name())))
        .map(Track::plan)
        .findFirst()
        .orElse(plan);
  }

  /** What stands at a place; empty for nothing. */
  public Optional<Exercise> at(At at) {
    return own().session().supersets().stream()
        .filter(it -> it.number() == at.superset() && at.position() < it.exercises().size())
        .map(superset -> superset.exercises().get(at.position()))
        .findFirst();
  }

  /** What stands at its places, in order. */
  List<Exercise> work() {
    return match.places().stream().map(this::at).flatMap(Optional::stream).toList();
  }

  /** The name of what stands at its first place. */
  public String exercise() {
    return work().stream().findFirst().map(Exercise::name).orElse("an exercise");
  }

  /** The name of what stands at its last place. */
  String last() {
    return work().stream().reduce((one, next) -> next).map(Exercise::name).orElse("another");
  }

  /** {@code Goblet squat to Hip hinge}; empty text if nothing stands at its places. */
  String exercises() {
    return String.join(" to ", work().stream().map(Exercise::name).distinct().toList());
  }

  /** The name of the muscle group, equipment or exercise that it is about where no place tells. */
  public String subject() {
    return names.of(match.subject().orElse(""));
  }

  /** The equipment that it is about, within a sentence. */
  String item() {
    return names.item(match.subject().orElse(""), plan.problem());
  }

  /** What the exercise needs and the client does not have. */
  String missing() {
    return work().stream()
        .findFirst()
        .map(exercise -> names.missing(exercise, plan.problem()))
        .orElse("more");
  }

  /** Those limitations that the exercise goes against. */
  String broken(Collection<String> limitations) {
    return work().stream()
        .findFirst()
        .map(exercise -> names.broken(exercise, limitations))
        .orElse("a limitation");
  }

  /** How far the target that it is about is covered. */
  Optional<TargetCoverage> coverage() {
    return own().coverage().stream()
        .filter(target -> match.subject().equals(Optional.of(target.muscle())))
        .findFirst();
  }

  /** The number of its superset. */
  int superset() {
    return match.places().get(0).superset();
  }

  /** The superset of that number in a session. */
  Optional<Superset> supersetOf(Plan session) {
    return session.session().supersets().stream()
        .filter(superset -> superset.number() == superset())
        .findFirst();
  }

  /** The limitations of those whom it concerns. */
  Collection<String> limitations() {
    return track() < 0 ? List.of() : plan.problem().tracks().get(track());
  }

  /** What they are shown beside the exercise. */
  Optional<Exercise> beside() {
    return track() < 0 || match.places().isEmpty()
        ? Optional.empty()
        : Optional.ofNullable(
            plan.session().modifications().get(track()).get(match.places().get(0)));
  }

  private int track() {
    return plan.problem().tracks().stream()
        .map(ids -> String.join("+", ids))
        .toList()
        .indexOf(match.track().orElse(""));
  }
}
