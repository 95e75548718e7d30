package counterset.catalogue;

import counterset.model.Exercise;
import java.util.List;

/** What an ordinary home may be taken to have. */
public final class HomeEquipment {

  /** The equipment, by id. */
  public static final List<String> IDS =
      List.of("dumbbell", "loop-band", "long-band", "chair", "mat", "ankle-weights", "wall");

  private HomeEquipment() {}

  /** Whether an exercise needs nothing that such a home does not have. */
  public static boolean isEnoughFor(Exercise exercise) {
    return exercise.needs().stream().allMatch(need -> IDS.contains(need.equipment()));
  }
}
