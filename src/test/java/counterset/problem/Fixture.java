package counterset.problem;

import counterset.json.InvalidInputException;
import counterset.json.JsonDocument;
import counterset.model.Aspect;
import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.EquipmentKind;
import counterset.model.Exercise;
import counterset.model.Joint;
import counterset.model.Limitation;
import counterset.model.Met;
import counterset.model.Muscle;
import counterset.model.Part;
import counterset.model.Position;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.model.Sides;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** A small catalogue, and readers over it. */
final class Fixture {

  static final Catalogue CATALOGUE =
      Catalogue.of(
          List.of(
              muscle("quadriceps", Region.LOWER, true),
              muscle("hamstrings", Region.LOWER, true),
              muscle("shins", Region.LOWER, false),
              muscle("chest", Region.UPPER, true)),
          List.of(
              new Equipment(
                  "dumbbell", "Dumbbell", EquipmentKind.HELD, 3, 2, false, Set.of(), List.of()),
              new Equipment("mat", "Mat", EquipmentKind.PLACED, 5, 3, true, Set.of(), List.of())),
          List.of(limitation("sore-knees"), limitation("sore-wrists")),
          List.of(
              exercise(
                  "goblet-squat", "squat", "squat", Part.MAIN, Sides.BILATERAL, Optional.empty()),
              exercise(
                  "heavy-goblet-squat",
                  "squat",
                  "squat",
                  Part.MAIN,
                  Sides.BILATERAL,
                  Optional.of("goblet-squat")),
              exercise("push-up", "push-up", "push", Part.MAIN, Sides.BILATERAL, Optional.empty()),
              exercise(
                  "split-squat",
                  "split-squat",
                  "lunge",
                  Part.MAIN,
                  Sides.UNILATERAL,
                  Optional.empty()),
              exercise(
                  "march", "march", "march", Part.WARM_UP, Sides.ALTERNATING, Optional.empty()),
              exercise(
                  "arm-circles",
                  "arm-circles",
                  "circle",
                  Part.WARM_UP,
                  Sides.BILATERAL,
                  Optional.empty()),
              exercise(
                  "quad-stretch",
                  "stretch",
                  "stretch",
                  Part.COOL_DOWN,
                  Sides.UNILATERAL,
                  Optional.empty()),
              exercise(
                  "chest-stretch",
                  "stretch",
                  "stretch",
                  Part.COOL_DOWN,
                  Sides.BILATERAL,
                  Optional.empty())));

  static final ProblemReader PROBLEMS =
      new ProblemReader(CATALOGUE, Set.of("floorTrip", "equipmentChange"));

  private Fixture() {}

  static Problem problem(String text) {
    return PROBLEMS.read(JsonDocument.parse("p.json", text), "");
  }

  /**
   * The faults of a problem with the three required fields and more, each on its own line from the
   * second on.
   */
  static List<String> faultsWith(String more) {
    return faults("{\"problem\": 1, \"minutes\": 20, \"targets\": [\"lower\"],\n" + more + "}");
  }

  static List<String> faults(String text) {
    try {
      problem(text);
      return List.of();
    } catch (InvalidInputException e) {
      return e.violations().stream().map(Object::toString).toList();
    }
  }

  private static Muscle muscle(String id, Region region, boolean target) {
    return new Muscle(id, id, region, Aspect.FRONT, Set.of(), target, List.of());
  }

  private static Limitation limitation(String id) {
    return Limitation.builder()
        .id(id)
        .name(id)
        .maxDemand(Map.of(Joint.KNEE, 1))
        .caution("Be gentle.")
        .source("none")
        .build();
  }

  private static Exercise exercise(
      String id,
      String family,
      String pattern,
      Part part,
      Sides sides,
      Optional<String> variantOf) {
    OptionalInt seconds = part == Part.MAIN ? OptionalInt.empty() : OptionalInt.of(30);
    return Exercise.builder()
        .id(id)
        .name(id)
        .part(part)
        .pattern(pattern)
        .family(family)
        .variantOf(variantOf)
        .multiJoint(true)
        .intensity(2)
        .level(1)
        .primary(Set.of("quadriceps"))
        .sides(sides)
        .position(Position.STANDING)
        .demandSource("common-practice")
        .met(new Met("02052", 2024, 5.0))
        .seconds(seconds)
        .setup("Stand.")
        .cues(List.of("Go."))
        .build();
  }
}
