package counterset.score;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.oneSided;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.fixture.SessionBuilder.session;
import static counterset.score.Check.costs;
import static counterset.score.Check.earns;
import static counterset.score.Check.silent;

import counterset.fixture.ExerciseBuilder;
import counterset.fixture.Problems;
import counterset.fixture.SessionBuilder;
import counterset.fixture.SmallWants;
import counterset.fixture.Trade;
import counterset.model.Done;
import counterset.model.Exercise;
import counterset.model.Owned;
import counterset.model.Sides;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TasteConstraintsTest {

  private static final LocalDate TODAY = LocalDate.of(2026, 3, 16);

  private final Exercise a = plain("a");
  private final Exercise b = plain("b");
  private final Exercise side = oneSided("side");

  /** A big lift done hard, power, several joints, one joint, easy work. */
  private static Exercise ofTier(int tier) {
    String pattern = tier == 3 ? "jump" : "squat";
    var builder = exercise("tier-" + tier).withPattern(pattern).withIntensity(2);
    return switch (tier) {
      case 4 -> builder.withIntensity(3).build();
      case 1 -> builder.withOneJoint().build();
      case 0 -> builder.withIntensity(1).build();
      default -> builder.build();
    };
  }

  private static SessionBuilder wanting() {
    return session().wanting(SmallWants.sharing(Map.of("squat", 100)));
  }

  @Test
  void lightBeforeHeavyCountsStepsOfEveryPair() {
    SessionBuilder falling = wanting().superset(ofTier(4), ofTier(3));
    silent(LightBeforeHeavy.class, falling.superset(ofTier(2), ofTier(1)).superset(ofTier(0)));
    silent(LightBeforeHeavy.class, wanting().superset(a, b));
    for (int tier = 0; tier < 4; tier++) {
      costs(LightBeforeHeavy.class, 1, wanting().superset(ofTier(tier), ofTier(tier + 1)));
    }
    costs(LightBeforeHeavy.class, 3, wanting().superset(ofTier(1)).superset(null, ofTier(4)));
    costs(LightBeforeHeavy.class, 4, wanting().superset(ofTier(1), ofTier(2)).superset(ofTier(3)));
  }

  @Test
  void lightBeforeHeavyTakesNoSmallPatternForABigLift() {
    Exercise dip = exercise("dip").withPattern("dip").withIntensity(3).build();
    silent(LightBeforeHeavy.class, wanting().superset(ofTier(2), dip));
  }

  @Test
  void lightBeforeHeavyCountsBothSidesOnce() {
    Exercise lightSide = exercise("light").withSides(Sides.UNILATERAL).withIntensity(1).build();
    costs(LightBeforeHeavy.class, 2, wanting().bothSides(lightSide).superset(ofTier(2)));
  }

  private static ExerciseBuilder squat(String id) {
    return exercise(id).withPattern("squat");
  }

  private final Exercise lifted = squat("lifted").withNeed(Trade.DUMBBELL, 1).build();

  @Test
  void unloadedCountsPositionsOfPatternsThatCouldBeLoaded() {
    Exercise bare = squat("bare").build();
    silent(Unloaded.class, session().superset(bare, a).candidates(lifted));
    silent(Unloaded.class, owning(Trade.DUMBBELL).superset(lifted, a));
    costs(Unloaded.class, 2, owning(Trade.DUMBBELL).superset(bare, a).candidates(lifted));
    silent(Unloaded.class, owning(Trade.DUMBBELL).superset(bare, a));
    Exercise sides = squat("sides").withSides(Sides.UNILATERAL).build();
    costs(Unloaded.class, 4, owning(Trade.DUMBBELL).bothSides(sides).candidates(lifted));
  }

  @Test
  void unloadedWantsALoadedExerciseThatIsWorthDoing() {
    Exercise bare = squat("bare").build();
    Exercise skilled = squat("skilled").withNeed(Trade.DUMBBELL, 1).withLevel(3).build();
    Exercise rare = squat("rare").withNeed(Trade.DUMBBELL, 1).withStanding(1).build();
    Exercise easy = squat("easy").withNeed(Trade.DUMBBELL, 1).withIntensity(1).build();
    for (Exercise other : List.of(skilled, rare, easy)) {
      silent(Unloaded.class, owning(Trade.DUMBBELL).superset(bare, a).candidates(other));
    }
  }

  @Test
  void unloadedTakesWhatCarriesTheClientForNoLoad() {
    Exercise chair = squat("chair").withNeed(Trade.CHAIR, 1).build();
    Exercise mat = squat("mat").withNeed(Trade.MAT, 1).build();
    SessionBuilder all = owning(Trade.CHAIR, Trade.DUMBBELL, Trade.MAT);
    costs(Unloaded.class, 4, all.superset(chair, mat).candidates(lifted));
  }

  @Test
  void unloadedTakesAChairForALoadIfThereIsNothingToLift() {
    Exercise chair = squat("chair").withNeed(Trade.CHAIR, 1).build();
    Exercise bare = squat("bare").build();
    costs(Unloaded.class, 2, owning(Trade.CHAIR).superset(chair, bare));
    silent(Unloaded.class, owning(Trade.MAT).superset(bare, chair));
  }

  private static SessionBuilder owning(String... equipment) {
    return session()
        .asked(p -> p.owning(Stream.of(equipment).map(Problems::two).toArray(Owned[]::new)));
  }

  @Test
  void tooEasyCountsStepsBelowTheLevel() {
    SessionBuilder[] sessions = new SessionBuilder[4];
    for (int level = 1; level <= 3; level++) {
      int client = level;
      sessions[level] =
          session().asked(p -> p.level(client)).superset(exercise("x").withLevel(2).build());
    }
    silent(TooEasy.class, sessions[1]);
    silent(TooEasy.class, sessions[2]);
    costs(TooEasy.class, 1, sessions[3]);
    costs(
        TooEasy.class,
        2,
        session().asked(p -> p.level(3)).superset(exercise("x").withLevel(1).build()));
    costs(TooEasy.class, 2, session().asked(p -> p.level(3)).superset(a).bothSides(side));
  }

  /** 20 points after a day, 0 after 14, and 20 * (14 - days) / 13, rounded, between them. */
  @ParameterizedTest
  @CsvSource({"1, 20", "2, 18", "3, 17", "7, 11", "8, 9", "12, 3", "13, 2"})
  void usedRecentlyFallsLinearly(int days, int points) {
    costs(
        UsedRecently.class,
        points,
        session().asked(p -> p.done(TODAY, daysAgo(days, "a"))).superset(a, b));
  }

  @ParameterizedTest
  @ValueSource(ints = {14, 15, 400, -1})
  void usedRecentlyForgetsAfterAFortnight(int days) {
    silent(
        UsedRecently.class, session().asked(p -> p.done(TODAY, daysAgo(days, "a"))).superset(a, b));
  }

  @Test
  void usedRecentlyTakesTheLatestUseAndCountsBothSidesOnce() {
    silent(UsedRecently.class, session().asked(p -> p.done(TODAY, daysAgo(1, "c"))).superset(a, b));
    costs(
        UsedRecently.class,
        38,
        session().asked(p -> p.done(TODAY, daysAgo(1, "a"), daysAgo(2, "a", "b"))).superset(a, b));
    costs(
        UsedRecently.class,
        20,
        session().asked(p -> p.done(TODAY, daysAgo(1, "side"))).bothSides(side));
    costs(
        UsedRecently.class,
        20,
        session().asked(p -> p.done(TODAY, daysAgo(0, "a"))).superset(a, b));
  }

  @Test
  void usedRecentlyCountsAVariantOfWhatWasDone() {
    Exercise variant = exercise("a-heavy").withVariantOf("a").build();
    costs(
        UsedRecently.class,
        20,
        session().asked(p -> p.done(TODAY, daysAgo(1, "a"))).superset(variant, b));
  }

  @Test
  void usedRecentlyWithoutADateMeansTheDayAfterTheLastSession() {
    Done[] done = {daysAgo(30, "a"), daysAgo(31, "b")};
    costs(
        UsedRecently.class, 38, session().asked(p -> p.done(TODAY, done).undated()).superset(a, b));
  }

  private static Done daysAgo(int days, String... exercises) {
    return new Done(TODAY.minusDays(days), List.of(exercises));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a", "a-family", "a-pattern"})
  void likesRewardsExercisesFamiliesAndPatterns(String name) {
    earns(Likes.class, 1, session().asked(p -> p.liking(name)).superset(a, b));
    silent(Likes.class, session().asked(p -> p.liking(name)).superset(b).bothSides(side));
  }

  @Test
  void likesCountsVariantsAndBothSidesOnce() {
    Exercise variant = exercise("a-heavy").withVariantOf("a").build();
    earns(Likes.class, 2, session().asked(p -> p.liking("a")).superset(variant, a));
    earns(Likes.class, 1, session().asked(p -> p.liking("side")).bothSides(side));
    silent(Likes.class, session().asked(p -> p.liking("a-heavy")).superset(a, b));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a", "a-family", "a-pattern"})
  void dislikesCostsExercisesFamiliesAndPatterns(String name) {
    costs(Dislikes.class, 1, session().asked(p -> p.disliking(name)).superset(a, b));
    silent(Dislikes.class, session().asked(p -> p.disliking(name)).superset(b));
  }

  @Test
  void dislikesCountsBothSidesOnce() {
    costs(
        Dislikes.class,
        1,
        session().asked(p -> p.disliking("side")).bothSides(side).superset(a, b));
  }
}
