package counterset.cli;

import counterset.json.BadRequest;
import counterset.json.Shown;
import counterset.model.At;
import counterset.model.Plan;
import counterset.model.Superset;
import counterset.review.Places;
import java.util.Optional;

/** The place of a plan that {@code --at} names. */
final class PlaceOption {

  private PlaceOption() {}

  /**
   * A place where something stands.
   *
   * @param written as the coach wrote it, or null
   * @throws BadRequest if there is none of that name
   */
  static At read(String written, Plan plan) {
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
    Optional<Superset> superset = Places.superset(plan, at);
    if (superset.isEmpty() || at.position() >= positions) {
      throw new BadRequest("--at (" + at + "): the plan has no such place. " + all(plan));
    }
    if (Places.standing(plan, at).isEmpty()) {
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
}
