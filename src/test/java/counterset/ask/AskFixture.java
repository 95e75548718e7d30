package counterset.ask;

import counterset.model.Aspect;
import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.EquipmentKind;
import counterset.model.Exercise;
import counterset.model.Joint;
import counterset.model.Limitation;
import counterset.model.Load;
import counterset.model.Met;
import counterset.model.Muscle;
import counterset.model.Need;
import counterset.model.Part;
import counterset.model.Position;
import counterset.model.Region;
import counterset.model.Sides;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A small catalogue, invented for the tests of asks. */
final class AskFixture {

  static final Catalogue CATALOGUE =
      Catalogue.of(muscles(), equipment(), limitations(), exercises());

  private AskFixture() {}

  static AskReading read(String ask) {
    return new AskReader(CATALOGUE).read(ask);
  }

  private static List<Muscle> muscles() {
    return List.of(
        muscle("quadriceps", Region.LOWER, true, "quads", "thighs"),
        muscle("hamstrings", Region.LOWER, true, "thighs"),
        muscle("gluteus-maximus", Region.LOWER, true, "glutes", "seat"),
        muscle("calves", Region.LOWER, true, "calf", "lower legs"),
        muscle("shins", Region.LOWER, false, "shin"),
        muscle("chest", Region.UPPER, true, "pecs"),
        muscle("upper-back", Region.UPPER, true, "back"),
        muscle("lats", Region.UPPER, true, "back"),
        muscle("shoulders", Region.UPPER, true, "delts"),
        muscle("biceps", Region.UPPER, true, "arms"),
        muscle("triceps", Region.UPPER, true, "arms"),
        muscle("abdominals", Region.CORE, true, "abs"),
        muscle("lower-back", Region.CORE, true, "low back"));
  }

  private static Muscle muscle(String id, Region region, boolean byDefault, String... names) {
    return new Muscle(id, name(id), region, Aspect.FRONT, Set.of(), byDefault, List.of(names));
  }

  private static List<Equipment> equipment() {
    return List.of(
        equipment("dumbbell", EquipmentKind.HELD, "dumbbells", "hand weights"),
        equipment("kettlebell", EquipmentKind.HELD),
        equipment("ankle-weights", EquipmentKind.WORN, "ankle cuffs"),
        equipment("loop-band", EquipmentKind.WORN, "mini band"),
        equipment("mat", EquipmentKind.PLACED),
        equipment("chair", EquipmentKind.PLACED),
        equipment("wall", EquipmentKind.FIXED),
        equipment("pull-up-bar", EquipmentKind.PLACED, "door bar"));
  }

  private static Equipment equipment(String id, EquipmentKind kind, String... names) {
    return new Equipment(id, name(id), kind, 0, 0, false, Set.of(), List.of(names));
  }

  private static List<Limitation> limitations() {
    return List.of(
        limitation(
            "sore-knees",
            Map.of(Joint.KNEE, 1),
            Set.of(),
            "sore knee",
            "bad knees",
            "knee pain",
            "knees"),
        limitation(
            "sore-lower-back",
            Map.of(Joint.LOWER_BACK, 1),
            Set.of(),
            "sore back",
            "back pain",
            "bad back"),
        limitation(
            "sore-shoulders",
            Map.of(Joint.SHOULDER, 1),
            Set.of(),
            "sore shoulder",
            "shoulder pain"),
        limitation("sore-wrists", Map.of(Joint.WRIST, 1), Set.of(), "sore wrist", "wrist pain"),
        limitation("no-jumping", Map.of(), Set.of(), "no jumps", "low impact", "quiet"),
        limitation(
            "no-floor", Map.of(), Set.of(Position.SUPINE), "off the floor", "nothing on the floor"),
        limitation("no-kneeling", Map.of(), Set.of(Position.KNEELING), "can't kneel"),
        limitation("pregnancy", Map.of(), Set.of(Position.SUPINE), "pregnant"));
  }

  private static Limitation limitation(
      String id, Map<Joint, Integer> max, Set<Position> avoid, String... names) {
    return Limitation.builder()
        .id(id)
        .name(name(id))
        .names(List.of(names))
        .maxDemand(max)
        .avoidPositions(avoid)
        .caution("Caution.")
        .source("None.")
        .build();
  }

  private static List<Exercise> exercises() {
    Need heavy = new Need("dumbbell", 1, Optional.of(Load.HEAVY));
    return List.of(
        exercise("goblet-squat", "squat", "squat", 1, Map.of(Joint.KNEE, 2), heavy),
        exercise("split-squat", "squat", "split-squat", 2, Map.of(Joint.KNEE, 2)),
        exercise("single-leg-squat", "squat", "squat", 3, Map.of(Joint.KNEE, 3)),
        exercise("reverse-lunge", "lunge", "lunge", 1, Map.of(Joint.KNEE, 2)),
        exercise("curtsy", "lunge", "curtsy", 2, Map.of(Joint.KNEE, 2)),
        exercise("hip-hinge", "hinge", "hinge", 1, Map.of()),
        exercise("glute-bridge", "bridge", "bridge", 1, Map.of()),
        exercise("push-up", "push", "push-up", 2, Map.of(Joint.WRIST, 2)),
        exercise("bent-row", "pull", "row", 2, Map.of(), new Need("dumbbell", 2, Optional.empty())),
        exercise(
            "floor-press", "push", "press", 1, Map.of(), new Need("dumbbell", 2, Optional.empty())),
        exercise("jumping-jack", "jump", "jack", 1, Map.of()),
        variant("curl", "arm-curl"),
        variant("curl-with-band", "arm-curl"),
        warmUp("march"));
  }

  private static Exercise exercise(
      String id,
      String pattern,
      String family,
      int level,
      Map<Joint, Integer> demand,
      Need... needs) {
    Position position = id.equals("glute-bridge") ? Position.SUPINE : Position.STANDING;
    return exercise(
        id,
        Part.MAIN,
        pattern,
        family,
        Optional.empty(),
        level,
        position,
        demand,
        List.of(),
        needs);
  }

  private static Exercise variant(String id, String name) {
    Need[] needs =
        id.equals("curl") ? new Need[0] : new Need[] {new Need("loop-band", 1, Optional.empty())};
    Optional<String> of = id.equals("curl") ? Optional.empty() : Optional.of("curl");
    return exercise(
        id,
        Part.MAIN,
        "elbow-flexion",
        "curl",
        of,
        1,
        Position.STANDING,
        Map.of(),
        List.of(name),
        needs);
  }

  private static Exercise warmUp(String id) {
    return exercise(
        id,
        Part.WARM_UP,
        "gait",
        "gait",
        Optional.empty(),
        1,
        Position.STANDING,
        Map.of(),
        List.of());
  }

  private static Exercise exercise(
      String id,
      Part part,
      String pattern,
      String family,
      Optional<String> variantOf,
      int level,
      Position position,
      Map<Joint, Integer> demand,
      List<String> names,
      Need... needs) {
    return Exercise.builder()
        .id(id)
        .name(name(id))
        .names(names)
        .part(part)
        .pattern(pattern)
        .family(family)
        .variantOf(variantOf)
        .multiJoint(true)
        .intensity(2)
        .level(level)
        .primary(Set.of("quadriceps"))
        .sides(Sides.BILATERAL)
        .position(position)
        .needs(List.of(needs))
        .demand(demand)
        .demandSource("None.")
        .met(new Met("02052", 2024, 5))
        .setup("Stand.")
        .build();
  }

  private static String name(String id) {
    return Character.toUpperCase(id.charAt(0)) + id.substring(1).replace('-', ' ');
  }
}
