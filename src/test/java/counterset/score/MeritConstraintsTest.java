package counterset.score;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.oneSided;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.fixture.SessionBuilder.session;
import static counterset.score.Check.costs;
import static counterset.score.Check.silent;

import counterset.fixture.Problems;
import counterset.fixture.SessionBuilder;
import counterset.fixture.SmallWants;
import counterset.fixture.Trade;
import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Sides;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What each exercise is worth to a client, whatever stands around it. */
class MeritConstraintsTest {

  private final Exercise a = plain("a");
  private final Exercise b = plain("b");
  private final Exercise side = oneSided("side");
  private final Exercise chest = exercise("chest").withPrimary("chest").build();

  private static Exercise ofStanding(int standing) {
    return exercise("standing-" + standing).withStanding(standing).build();
  }

  private static Exercise ofIntensity(int intensity) {
    return exercise("intensity-" + intensity).withIntensity(intensity).build();
  }

  private static SessionBuilder level(int level) {
    return session().asked(p -> p.level(level));
  }

  @Test
  void offTargetCountsPositionsThatTrainNothingAskedFor() {
    silent(OffTarget.class, session().superset(a, b));
    costs(OffTarget.class, 1, session().superset(a, chest));
    Exercise helps = exercise("helps").withPrimary("chest").withSecondary("quadriceps").build();
    costs(OffTarget.class, 1, session().superset(a, helps));
    Exercise both = exercise("both").withPrimary("quadriceps", "chest").build();
    silent(OffTarget.class, session().superset(a, both));
    Exercise besides = exercise("besides").withPrimary("chest", "quadriceps").build();
    costs(OffTarget.class, 1, session().superset(a, besides));
    Exercise sides = exercise("sides").withPrimary("chest").withSides(Sides.UNILATERAL).build();
    costs(OffTarget.class, 2, session().bothSides(sides));
  }

  @Test
  void offTargetForgivesWhatIsIncludedOrKept() {
    silent(OffTarget.class, session().asked(p -> p.including("chest")).superset(a, chest));
    Keep keep = new Keep(new At(1, 1), "chest");
    silent(OffTarget.class, session().asked(p -> p.keeping(keep)).superset(a, chest));
  }

  @Test
  void offTargetTakesConditioningAndJumpsForWorkOnlyWhereTheyAreWanted() {
    Exercise jog = SmallWants.of("jog", "jog");
    Exercise jump = SmallWants.of("jump", "jump");
    SessionBuilder legs = session().wanting(SmallWants.sharing(Map.of("squat", 100)));
    costs(OffTarget.class, 2, legs.superset(jog, jump));
    SessionBuilder jogging = session().wanting(SmallWants.sharing(Map.of("jog", 10)));
    silent(OffTarget.class, jogging.superset(jog, a));
    SessionBuilder skilled = session().wanting(SmallWants.BROAD).asked(p -> p.level(3));
    silent(OffTarget.class, skilled.superset(jump, a));
    SessionBuilder lifting = session().wanting(SmallWants.BROAD).asked(p -> p.level(3));
    costs(
        OffTarget.class,
        1,
        lifting.asked(p -> p.owning(Problems.two(Trade.ANKLE_WEIGHTS))).superset(jump, a));
  }

  @Test
  void lastResortCountsPositions() {
    silent(LastResort.class, session().superset(ofStanding(3), ofStanding(2)));
    costs(LastResort.class, 1, session().superset(ofStanding(1), ofStanding(2)));
    Exercise sides = exercise("sides").withStanding(1).withSides(Sides.UNILATERAL).build();
    costs(LastResort.class, 2, session().bothSides(sides));
    silent(LastResort.class, session().superset());
  }

  @Test
  void knownCountsPositionsThatAreNeitherStapleNorLastResort() {
    silent(Known.class, session().superset(staple(7), ofStanding(1)));
    costs(Known.class, 5, session().superset(staple(7), ofStanding(2)));
    costs(Known.class, 10, session().bothSides(side));
  }

  @Test
  void knownPrefersStaplesThatManyListsName() {
    costs(Known.class, 1, session().superset(staple(7), staple(6)));
    costs(Known.class, 1, session().superset(staple(9), staple(4)));
    costs(Known.class, 2, session().superset(staple(7), staple(3)));
    costs(Known.class, 3, session().superset(staple(5), staple(0)));
  }

  private static Exercise staple(int lists) {
    List<String> names = IntStream.range(0, lists).mapToObj(it -> "list-" + it).toList();
    return exercise("named-by-" + lists).withStanding(3).withStandingSources(names).build();
  }

  @Test
  void easyWorkCountsPositionsBelowWorkingEffort() {
    silent(EasyWork.class, session().superset(ofIntensity(2), ofIntensity(3)));
    costs(EasyWork.class, 1, session().superset(ofIntensity(1), ofIntensity(2)));
    silent(EasyWork.class, level(1).superset(ofIntensity(1), ofIntensity(2)));
    Exercise sides = exercise("sides").withIntensity(1).withSides(Sides.UNILATERAL).build();
    costs(EasyWork.class, 2, session().bothSides(sides));
  }

  @Test
  void notHardAsksTheSkilledForHardWork() {
    silent(NotHard.class, session().superset(ofIntensity(1), ofIntensity(2)));
    silent(NotHard.class, level(3).superset(ofIntensity(3)));
    costs(NotHard.class, 1, level(3).superset(ofIntensity(3), ofIntensity(2)));
    costs(NotHard.class, 2, level(3).superset(ofIntensity(1), ofIntensity(2)));
    Exercise skilled = exercise("skilled").withLevel(3).build();
    costs(NotHard.class, 1, level(3).superset(skilled));
    silent(NotHard.class, session().superset(skilled));
  }

  private static Exercise version(String id, int intensity) {
    return exercise(id).withFamily("family").withIntensity(intensity).build();
  }

  @Test
  void softerCountsPositionsWithAClearlyHarderVersion() {
    Exercise soft = version("soft", 2);
    costs(Softer.class, 1, session().superset(soft, a).candidates(version("hard", 3)));
    costs(Softer.class, 1, session().superset(soft, version("hard", 3)));
    silent(Softer.class, session().superset(soft, a).candidates(version("same", 2)));
    silent(Softer.class, session().superset(soft, a).candidates(ofIntensity(3)));
  }

  /** Effort in tenths: a staple of the trunk that is light has 15, light loaded work 17. */
  @Test
  void softerAsksForHalfAnIntensity() {
    SessionBuilder trunk = session().wanting(SmallWants.sharing(Map.of("brace", 100)));
    Exercise plank =
        exercise("plank")
            .withPattern("brace")
            .withFamily("family")
            .withIntensity(1)
            .withStanding(3)
            .build();
    Exercise staple =
        exercise("staple").withFamily("family").withIntensity(2).withStanding(3).build();
    costs(Softer.class, 1, trunk.superset(plank, a).candidates(staple));
    Exercise worn =
        exercise("worn")
            .withFamily("family")
            .withIntensity(1)
            .withNeed(Trade.ANKLE_WEIGHTS, 1)
            .build();
    silent(Softer.class, session().superset(worn, a).candidates(version("harder", 2)));
  }

  @Test
  void softerKnowsOnlyVersionsThatSuitAndStandAsHigh() {
    Exercise soft = version("soft", 2);
    Exercise rare = exercise("rare").withFamily("family").withIntensity(3).withStanding(1).build();
    Exercise skilled =
        exercise("skilled").withFamily("family").withIntensity(3).withLevel(3).build();
    Exercise sides =
        exercise("sides").withFamily("family").withIntensity(3).withSides(Sides.UNILATERAL).build();
    silent(Softer.class, session().superset(soft, a).candidates(rare, skilled, sides));
    SessionBuilder excluding = session().asked(p -> p.excluding("hard"));
    silent(Softer.class, excluding.superset(soft, a).candidates(version("hard", 3)));
  }

  @Test
  void partialRangeCountsPositionsOfTheAbleBodied() {
    Exercise partial = exercise("partial").withTraits("partial-range").build();
    costs(PartialRange.class, 1, session().superset(partial, a));
    silent(PartialRange.class, session().superset(a, b));
    silent(PartialRange.class, level(1).superset(partial, a));
    silent(PartialRange.class, session().asked(p -> p.limited("no-floor")).superset(partial, a));
  }
}
