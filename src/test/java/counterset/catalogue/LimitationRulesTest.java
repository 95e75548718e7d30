package counterset.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Identified;
import counterset.model.Joint;
import counterset.model.Limitation;
import counterset.model.Part;
import counterset.model.Position;
import counterset.model.Rule;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What limitations allow and rule out, over the whole catalogue, against the studies and guidelines
 * that their rules name.
 */
class LimitationRulesTest {

  private static final Catalogue CATALOGUE = Catalogues.embedded();

  /** The only sources that a rule may name, besides common practice. */
  private static final List<String> KNOWN_SOURCES =
      List.of(
          "Scattone Silva 2024",
          "Powers 2014",
          "Escamilla 2008",
          "Escamilla 2009",
          "Reilly and Martens 1972",
          "van Rossom 2018",
          "Kolasinski 2020",
          "Bannuru 2019",
          "Thomee 1997",
          "NICE NG59",
          "McGill, Low Back Disorders",
          "McGill 2014",
          "Janssen 2002",
          "Grimaldi and Fearon 2015",
          "Brooke-Wavell 2022",
          "Kessel and Watson 1977",
          "Kolber 2013",
          "Kolber 2014",
          "Schoenfeld 2011",
          "Handbook convention",
          "ACOG Committee Opinion 804",
          "Pescatello 2004",
          "Williams 2007",
          "Nery 2010",
          "Giangregorio 2014 and 2015",
          "Garber 2011");

  static Collection<Limitation> limitations() {
    return CATALOGUE.limitations().values();
  }

  /** Whether it narrows a session to one posture, whatever the body could do. */
  private static boolean isChoice(String id) {
    return id.endsWith("-only");
  }

  private static Limitation limitation(String id) {
    return CATALOGUE.limitations().get(id);
  }

  private static Stream<Exercise> all() {
    return CATALOGUE.exercises().values().stream();
  }

  private static Stream<Exercise> main() {
    return CATALOGUE.exercises(Part.MAIN).stream();
  }

  private static Stream<Exercise> main(String... patterns) {
    return main().filter(exercise -> Set.of(patterns).contains(exercise.pattern()));
  }

  private static Stream<Exercise> allowed(String limitation) {
    return all().filter(limitation(limitation)::allows);
  }

  private static Stream<Exercise> having(String trait) {
    return all().filter(exercise -> exercise.traits().contains(trait));
  }

  private static boolean isFor(String limitation, String exercise) {
    assertThat(CATALOGUE.exercises()).containsKey(exercise);
    return limitation(limitation).allows(CATALOGUE.exercises().get(exercise));
  }

  private static void are(String limitation, boolean allowed, String... exercises) {
    assertThat(exercises)
        .allSatisfy(id -> assertThat(isFor(limitation, id)).as(id).isEqualTo(allowed));
  }

  // The rules themselves

  @ParameterizedTest
  @MethodSource("limitations")
  void everyRuleHasASourceAndItsStatus(Limitation limitation) {
    assertThat(limitation.rules())
        .isNotEmpty()
        .doesNotHaveDuplicates()
        .allSatisfy(
            rule -> {
              assertThat(rule.rule()).endsWith(".");
              boolean custom = rule.source().startsWith("Common practice, no source");
              boolean definition = rule.source().startsWith("Definition");
              assertThat(rule.status() == Rule.Status.COMMON_PRACTICE)
                  .as(rule.rule())
                  .isEqualTo(custom || definition);
              assertThat(custom || definition || isKnown(rule.source())).as(rule.source()).isTrue();
            });
  }

  private static boolean isKnown(String source) {
    return KNOWN_SOURCES.stream().anyMatch(source::contains);
  }

  @Test
  void theStatusesAreThoseOfTheFormat() {
    assertThat(Arrays.stream(Rule.Status.values()).map(Identified::id))
        .containsExactly("primary", "secondary", "memory", "computed", "common-practice");
  }

  @ParameterizedTest
  @MethodSource("limitations")
  void everyTraitToAvoidIsUsed(Limitation limitation) {
    assertThat(limitation.avoidTraits())
        .allSatisfy(trait -> assertThat(having(trait)).as(trait).isNotEmpty());
  }

  /** What the body does not allow cannot be found out by a program: common practice, no source. */
  @ParameterizedTest
  @MethodSource("limitations")
  void theCautionSendsToSomeoneWhoCanExamine(Limitation limitation) {
    if (!limitation.id().startsWith("no-") && !isChoice(limitation.id())) {
      assertThat(limitation.caution())
          .containsPattern("examin|licensed professional|doctor|looked into");
    }
  }

  // Knees

  /**
   * Tier 1 (at most 0.33) holds every step-up to 30 cm (0.187 to 0.321); lunges and split squats
   * (0.406 to 0.471) are tier 2: Scattone Silva 2024. A bench is higher than what was measured.
   */
  @Test
  void stepsAreForSoreKneesAndLungesAreNot() {
    List<Exercise> low = main("step").filter(step -> !isOntoBench(step)).toList();
    assertThat(low)
        .hasSizeGreaterThanOrEqualTo(5)
        .allSatisfy(step -> assertThat(isFor("sore-knees", step.id())).as(step.id()).isTrue());
    assertThat(main("step").filter(LimitationRulesTest::isOntoBench))
        .isNotEmpty()
        .noneMatch(limitation("sore-knees")::allows);
    int highestStep = low.stream().mapToInt(e -> e.demandOn(Joint.KNEE)).max().orElseThrow();
    assertThat(main("lunge").filter(lunge -> !lunge.id().equals("tap-back")))
        .hasSizeGreaterThanOrEqualTo(10)
        .allSatisfy(
            lunge -> {
              assertThat(lunge.demandOn(Joint.KNEE)).as(lunge.id()).isGreaterThan(highestStep);
              assertThat(isFor("sore-knees", lunge.id())).as(lunge.id()).isFalse();
            });
  }

  private static boolean isOntoBench(Exercise step) {
    return step.needs().stream().anyMatch(need -> need.equipment().equals("bench"));
  }

  /**
   * A squat to 60 degrees (0.224) is tier 1, a full one (0.428) tier 2: Scattone Silva 2024; kind
   * between 45 and 0 degrees: Powers 2014.
   */
  @Test
  void whatSoreKneesMayDoOnTheirFeetIsNeverDeep() {
    assertThat(main("squat", "lunge", "step").filter(limitation("sore-knees")::allows))
        .hasSizeGreaterThanOrEqualTo(10)
        .noneMatch(exercise -> exercise.traits().contains("deep-knee-flexion"))
        .allMatch(exercise -> exercise.demandOn(Joint.KNEE) == 1);
    assertThat(having("deep-knee-flexion"))
        .allSatisfy(e -> assertThat(e.demandOn(Joint.KNEE)).as(e.id()).isGreaterThanOrEqualTo(2));
  }

  /**
   * Jumps and hops (0.563 to 0.711) are above every step-up (at most 0.321) and every full squat on
   * two legs (0.428): Scattone Silva 2024.
   */
  @Test
  void everyJumpHasTheHighestDemandOnTheKnee() {
    assertThat(having("jump"))
        .hasSizeGreaterThanOrEqualTo(4)
        .allSatisfy(jump -> assertThat(jump.demandOn(Joint.KNEE)).as(jump.id()).isEqualTo(3));
  }

  /** Wall squats load the joint most from 60 to 90 degrees: Escamilla 2009. */
  @Test
  void aWallSitAtNinetyDegreesIsNotForSoreKnees() {
    are("sore-knees", false, "wall-sit", "ball-wall-squat");
    are("sore-knees", true, "high-wall-sit", "wall-slide-squat");
  }

  /**
   * Extension against a weight is kind from 90 to 45 degrees and hardest in the last 30: Powers
   * 2014.
   */
  @Test
  void aWeightedKneeIsNotStraightenedToTheEnd() {
    assertThat(having("knee-lockout-load"))
        .isNotEmpty()
        .allMatch(exercise -> exercise.demandOn(Joint.KNEE) >= 2)
        .noneMatch(limitation("sore-knees")::allows);
    assertThat(main("knee-extension").filter(e -> !e.needs().isEmpty()))
        .filteredOn(limitation("sore-knees")::allows)
        .allMatch(exercise -> exercise.id().contains("low-arc"));
  }

  /** No weight on the kneecap: common practice, no source. */
  @Test
  void kneelingLoadsTheKnee() {
    assertThat(main().filter(e -> isOnTheKnees(e.position())))
        .allSatisfy(e -> assertThat(e.demandOn(Joint.KNEE)).as(e.id()).isGreaterThanOrEqualTo(2));
    assertThat(allowed("sore-knees")).noneMatch(e -> isOnTheKnees(e.position()));
  }

  private static boolean isOnTheKnees(Position position) {
    return position == Position.KNEELING || position == Position.QUADRUPED;
  }

  /**
   * Exercise is what the guidelines recommend (Kolasinski 2020, Bannuru 2019), the hips included
   * (Willy 2019, from memory): a leg session stays a leg session.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "quadriceps",
        "hamstrings",
        "gluteus-maximus",
        "hip-abductors",
        "hip-adductors",
        "calves"
      })
  void soreKneesStillTrainTheLegs(String muscle) {
    Set<String> left =
        allowed("sore-knees")
            .filter(e -> e.part() == Part.MAIN && e.primary().contains(muscle))
            .filter(HomeEquipment::isEnoughFor)
            .map(Exercise::root)
            .collect(Collectors.toSet());
    assertThat(left).hasSizeGreaterThanOrEqualTo(6);
  }

  @Test
  void soreKneesStillSquatAndHinge() {
    assertThat(allowed("sore-knees").map(Exercise::pattern))
        .contains("squat", "step", "hinge", "bridge", "abduction", "adduction", "knee-extension");
  }

  // Back and bones

  /** Curl-up, side bridge and bird dog: McGill, Low Back Disorders (from memory). */
  @Test
  void aSoreLowerBackKeepsNeutralEnduranceWork() {
    are("sore-lower-back", true, "curl-up", "side-plank", "side-plank-knees", "bird-dog");
    are("sore-lower-back", true, "dead-bug", "hip-hinge", "glute-bridge");
  }

  /** No loaded end-range bending: McGill, Low Back Disorders (from memory). */
  @Test
  void aSoreLowerBackDoesNotRoundOrTwist() {
    are("sore-lower-back", false, "crunch", "crunch-dumbbell", "sit-up", "reverse-crunch");
    are("sore-lower-back", false, "roll-down", "seated-floor-twist", "dumbbell-chop");
    assertThat(having("spinal-extension")).noneMatch(limitation("sore-lower-back")::allows);
  }

  /**
   * No rapid, repetitive, weighted or end-range bending and twisting of the spine, no sit-up,
   * loaded crunch or toe touch: Giangregorio 2014 and 2015; Brooke-Wavell 2022 (secondary).
   */
  @Test
  void lowBoneDensitySparesTheSpine() {
    assertThat(main("trunk-flexion"))
        .hasSizeGreaterThanOrEqualTo(8)
        .noneMatch(limitation("low-bone-density")::allows);
    assertThat(allowed("low-bone-density").map(Exercise::traits))
        .noneMatch(traits -> traits.contains("spinal-flexion"))
        .noneMatch(traits -> traits.contains("upper-trunk-flexion"))
        .noneMatch(traits -> traits.contains("spinal-twist"));
    are("low-bone-density", false, "sit-up", "curl-up", "crunch-dumbbell", "bicycle-crunch");
  }

  /** Hinge at the hip, extend the back, train balance: Giangregorio 2014 and 2015. */
  @Test
  void lowBoneDensityKeepsHingesBackWorkAndBalance() {
    are("low-bone-density", true, "hip-hinge", "dumbbell-romanian-deadlift", "dumbbell-deadlift");
    are("low-bone-density", true, "bird-dog", "prone-back-raise", "standing-leg-raise-side");
  }

  // Pregnancy, pressure, balance

  /**
   * No prolonged lying on the back, no risk of a fall: ACOG Committee Opinion 804 (from memory). A
   * twisted or pressed abdomen: common practice, no source.
   */
  @Test
  void pregnancyLiesOnTheSideOnlyAndStandsFirmly() {
    assertThat(allowed("pregnancy"))
        .isNotEmpty()
        .noneMatch(e -> e.position() == Position.SUPINE || e.position() == Position.PRONE)
        .noneMatch(e -> e.traits().contains("lies-flat"))
        .noneMatch(e -> e.traits().contains("single-leg-stand"))
        .noneMatch(e -> e.traits().contains("fast-change"))
        .noneMatch(e -> e.traits().contains("jump"))
        .noneMatch(e -> e.traits().contains("abdominal-pressure"));
    are("pregnancy", true, "side-lying-leg-raise", "clam", "bird-dog", "supported-leg-curl");
  }

  /** The stop signs of ACOG Committee Opinion 804 (secondary). */
  @Test
  void theCautionOfPregnancyNamesTheStopSigns() {
    assertThat(limitation("pregnancy").caution())
        .contains("bleeding", "abdominal pain", "fluid loss", "contractions", "chest pain")
        .contains("breathlessness before effort", "dizziness", "headache", "weakness", "calf pain");
  }

  /**
   * No long holds, since advice differs: Edwards 2023 against Pescatello 2004 (both from memory).
   * No tight grip: Pescatello 2004, Williams 2007 (from memory). Short of failure: Nery 2010.
   */
  @Test
  void highBloodPressureHoldsNothingLongAndGripsLightly() {
    are("high-blood-pressure", false, "high-wall-sit", "wall-sit", "side-plank", "knee-plank");
    are("high-blood-pressure", true, "dead-bug", "bird-dog", "side-plank-hip-lift-knees");
    are("high-blood-pressure", false, "standing-heavy-hold", "dead-hang", "farmer-march");
    assertThat(limitation("high-blood-pressure").caution())
        .contains("never hold the breath", "keep every hold short")
        .contains("short of exhaustion", "under control");
  }

  /** Balance is trained and not avoided: Garber 2011, WHO 2020 (secondary). */
  @Test
  void unsteadyBalanceStandsOnOneLegWithASupport() {
    are("unsteady-balance", true, "supported-side-leg-raise", "supported-calf-raise");
    are("unsteady-balance", true, "supported-low-step-up", "supported-leg-curl");
    are("unsteady-balance", false, "standing-leg-raise-side", "low-step-up", "ball-seated-march");
  }

  // Shoulders and wrists

  /**
   * Nothing through 60 to 120 degrees of abduction: Kessel and Watson 1977 (from memory); no
   * lateral raise or upright row above shoulder height: Kolber 2014 (secondary), Schoenfeld 2011
   * (from memory); nothing behind the neck: Kolber 2013 (from memory).
   */
  @Test
  void soreShouldersStayBelowThePainfulArc() {
    are("sore-shoulders", false, "lateral-raise", "scaption-raise", "side-arm-hold", "arm-circles");
    are("sore-shoulders", false, "upright-row", "kettlebell-halo", "chair-dip");
    are("sore-shoulders", false, "overhead-triceps-extension", "overhead-press", "floor-fly");
    are("sore-shoulders", true, "low-scapular-raise", "dumbbell-low-scapular-raise");
    are("sore-shoulders", true, "neutral-grip-floor-press", "band-external-rotation");
    assertThat(allowed("sore-shoulders"))
        .noneMatch(e -> e.traits().contains("arm-raise-mid-arc"))
        .noneMatch(e -> e.traits().contains("shoulder-end-range"));
  }

  /** No loaded end-range extension; fists, forearms and handles stay: handbook convention. */
  @Test
  void soreWristsNeverLeanOnAFlatHand() {
    are("sore-wrists", false, "push-up", "high-plank", "bird-dog", "wall-push-up", "pike-push-up");
    are("sore-wrists", true, "push-up-on-dumbbells", "knee-push-up-on-fists", "forearm-plank");
    are("sore-wrists", true, "wall-push-up-on-fists", "forearm-donkey-kick", "side-plank");
    assertThat(having("wrist-extension-load")).noneMatch(limitation("sore-wrists")::allows);
  }

  // Enough to do

  /**
   * No pair is left out: any two of the limitations may come together in one client (low bone
   * density with pregnancy is rare, but known), and none of them is short of exercises.
   */
  @Test
  void everyLimitationAndEveryPairLeavesEnoughAtHome() {
    assertThat(LimitationGaps.of(CATALOGUE).missing())
        .filteredOn(cell -> cell.limitations().stream().noneMatch(LimitationRulesTest::isChoice))
        .isEmpty();
  }

  @Test
  void homeEquipmentIsKnown() {
    assertThat(CATALOGUE.equipment()).containsKeys(HomeEquipment.IDS.toArray(String[]::new));
  }

  // The words of a coach

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sit-up",
        "crunch",
        "jumping jack",
        "plank",
        "squat",
        "burpee",
        "lunge",
        "deadlift",
        "step-up",
        "calf raise",
        "hip thrust",
        "mountain climber",
        "bear crawl"
      })
  void theWordsOfACoachNameOneExercise(String word) {
    assertThat(all().filter(e -> e.name().equalsIgnoreCase(word) || e.names().contains(word)))
        .hasSize(1);
  }

  /** A warm-up move may share a name with a main exercise, because only the latter is asked for. */
  @Test
  void noNameBelongsToTwoMainExercises() {
    assertThat(main().flatMap(LimitationRulesTest::names)).doesNotHaveDuplicates();
  }

  private static Stream<String> names(Exercise exercise) {
    return Stream.concat(Stream.of(exercise.id(), exercise.name()), exercise.names().stream())
        .map(name -> name.toLowerCase(Locale.ROOT).replace(' ', '-'))
        .distinct();
  }
}
