package counterset.cli;

import counterset.json.BadRequest;
import counterset.json.Shown;
import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Plan;
import counterset.model.Superset;
import java.util.Optional;

/** The places of a plan, as options name them. */
final class Places {

  private Places() {}

  /** What stands at a place; empty if nothing does. */
  static Optional<Exercise> standing(Plan plan, At at) {
    return superset(plan, at)
        .flatMap(it -> it.exercises().stream().skip(at.position()).findFirst());
  }

  private static Optional<Superset> superset(Plan plan, At at) {
    return plan.session().supersets().stream()
        .filter(superset -> superset.number() == at.superset())
        .findFirst();
  }

  /**
   * A place where something stands.
   *
   * @param written as the coach wrote it, or null
   * @throws BadRequest if there is none of that name
   */
  static At filled(String written, Plan plan) {
    if (written == null) {
      throw new BadRequest("--at is missing: the place to swap, such as --at 1A. " + all(plan));
    }
    At at =
        At.parse(written)
            .orElseThrow(
                () ->
                    new BadRequest(
                        "--at ("
                            + Shown.of(written)
                            + ") must be a place such as 3B: superset 3, second exercise. "
                            + all(plan)));
    int positions = plan.problem().clock().perSuperset();
    Optional<Superset> superset = superset(plan, at);
    if (superset.isEmpty() || at.position() >= positions) {
      throw new BadRequest("--at (" + at + "): the plan has no such place. " + all(plan));
    }
    if (standing(plan, at).isEmpty()) {
      throw new BadRequest(
          "--at ("
              + at
              + "): the place is empty, so there is nothing to swap. Maybe plan the session anew.");
    }
    return at;
  }

  private static String all(Plan plan) {
    int supersets = plan.session().supersets().size();
    if (supersets == 0) {
      return "The plan has no supersets.";
    }
    At last = new At(supersets, plan.problem().clock().perSuperset() - 1);
    return "The places of this plan are 1A to " + last + ".";
  }

  /** The wish that keeps what stands at a place where it is. */
  static Optional<Keep> keeping(Plan plan, At at) {
    Optional<String> standing = standing(plan, at).map(Exercise::id);
    return plan.problem().keep().stream()
        .filter(keep -> Optional.of(keep.exercise()).equals(standing))
        .filter(keep -> keep.at().equals(at) || isOtherSide(plan, at, keep))
        .findFirst();
  }

  private static boolean isOtherSide(Plan plan, At at, Keep keep) {
    return keep.at().superset() == at.superset()
        && superset(plan, at).filter(Superset::isUnilateral).isPresent();
  }
}
