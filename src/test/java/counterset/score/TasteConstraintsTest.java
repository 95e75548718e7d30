package counterset.score;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.oneSided;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.fixture.SessionBuilder.session;
import static counterset.score.Check.costs;
import static counterset.score.Check.earns;
import static counterset.score.Check.silent;

import counterset.fixture.Problems;
import counterset.fixture.SessionBuilder;
import counterset.fixture.Trade;
import counterset.model.Done;
import counterset.model.Exercise;
import counterset.model.Owned;
import counterset.model.Sides;
import java.time.LocalDate;
import java.util.List;
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

  private static Exercise of(int intensity) {
    return exercise("intensity-" + intensity).withIntensity(intensity).build();
  }

  @Test
  void lightBeforeHeavyCountsStepsOfEveryPair() {
    silent(LightBeforeHeavy.class, session().superset(of(3), of(2)).superset(of(1)));
    silent(LightBeforeHeavy.class, session().superset(a, b));
    costs(LightBeforeHeavy.class, 1, session().superset(of(2), of(3)));
    costs(LightBeforeHeavy.class, 2, session().superset(of(1)).superset(null, of(3)));
    costs(LightBeforeHeavy.class, 4, session().superset(of(1), of(2)).superset(of(3)));
  }

  @Test
  void lightBeforeHeavyCountsBothSidesOnce() {
    Exercise lightSide = exercise("light").withSides(Sides.UNILATERAL).withIntensity(1).build();
    costs(LightBeforeHeavy.class, 2, session().bothSides(lightSide).superset(of(3)));
  }

  @Test
  void familyAgainCountsPairs() {
    Exercise cousin = exercise("cousin").withFamily("a-family").build();
    Exercise other = exercise("other").withFamily("a-family").build();
    silent(FamilyAgain.class, session().superset(a, b).bothSides(side));
    costs(FamilyAgain.class, 1, session().superset(a, cousin));
    costs(FamilyAgain.class, 1, session().superset(a, b).superset(null, cousin));
    costs(FamilyAgain.class, 3, session().superset(a, cousin).superset(other));
  }

  @Test
  void unloadedCountsPositionsWithoutTheClientsEquipment() {
    Exercise dumbbells = exercise("dumbbells").withNeed(Trade.DUMBBELL, 2).build();
    Exercise chair = exercise("chair").withNeed(Trade.CHAIR, 1).build();
    silent(Unloaded.class, session().superset(a, b));
    silent(Unloaded.class, owning(Trade.DUMBBELL).superset(dumbbells));
    costs(Unloaded.class, 1, owning(Trade.DUMBBELL).superset(dumbbells, a));
    costs(Unloaded.class, 2, owning(Trade.DUMBBELL).superset(chair, a));
    costs(Unloaded.class, 2, owning(Trade.DUMBBELL).bothSides(side));
    silent(Unloaded.class, owning(Trade.DUMBBELL).superset());
  }

  @Test
  void unloadedTakesWhatCarriesTheClientForNoLoad() {
    Exercise chair = exercise("chair").withNeed(Trade.CHAIR, 1).build();
    Exercise mat = exercise("mat").withNeed(Trade.MAT, 1).build();
    Exercise both = exercise("both").withNeed(Trade.CHAIR, 1).withNeed(Trade.DUMBBELL, 1).build();
    costs(Unloaded.class, 1, owning(Trade.CHAIR, Trade.DUMBBELL).superset(both, chair));
    costs(Unloaded.class, 2, owning(Trade.DUMBBELL, Trade.MAT, Trade.CHAIR).superset(mat, chair));
  }

  @Test
  void unloadedTakesAChairForALoadIfThereIsNothingToLift() {
    Exercise chair = exercise("chair").withNeed(Trade.CHAIR, 1).build();
    Exercise mat = exercise("mat").withNeed(Trade.MAT, 1).build();
    silent(Unloaded.class, owning(Trade.CHAIR).superset(chair));
    costs(Unloaded.class, 1, owning(Trade.CHAIR).superset(chair, a));
    costs(Unloaded.class, 1, owning(Trade.CHAIR, Trade.MAT).superset(chair, mat));
    silent(Unloaded.class, owning(Trade.MAT).superset(mat, a).superset(chair, b));
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

  @Test
  void tooLightCountsStepsShortOfTwoAPosition() {
    silent(TooLight.class, session().superset(a, b));
    silent(TooLight.class, session().superset(of(1), of(3)));
    silent(TooLight.class, session().superset(of(3)));
    silent(TooLight.class, session().superset());
    costs(TooLight.class, 1, session().superset(of(1), a));
    Exercise lightSide = exercise("light").withSides(Sides.UNILATERAL).withIntensity(1).build();
    costs(TooLight.class, 1, session().bothSides(lightSide).superset(of(3), a));
    costs(TooLight.class, 2, session().bothSides(lightSide));
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
