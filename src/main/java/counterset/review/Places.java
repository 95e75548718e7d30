package counterset.review;

import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Plan;
import counterset.model.Superset;
import java.util.Optional;

/** The places of a plan, and what stands there. */
public final class Places {

  private Places() {}

  /** What stands at a place; empty if nothing does. */
  public static Optional<Exercise> standing(Plan plan, At at) {
    return superset(plan, at)
        .flatMap(it -> it.exercises().stream().skip(at.position()).findFirst());
  }

  /** The superset of a place; empty if there is none. */
  public static Optional<Superset> superset(Plan plan, At at) {
    return plan.session().supersets().stream()
        .filter(superset -> superset.number() == at.superset())
        .findFirst();
  }

  /** The wish that keeps what stands at a place where it is. */
  public static Optional<Keep> keeping(Plan plan, At at) {
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
