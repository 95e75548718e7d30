package counterset.planning.constraints;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.oneSided;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.fixture.SessionBuilder.session;
import static counterset.planning.constraints.Check.costs;
import static counterset.planning.constraints.Check.earns;
import static counterset.planning.constraints.Check.silent;
import static counterset.planning.constraints.SessionConstraint.*;

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
    silent(LIGHT_BEFORE_HEAVY, session().superset(of(3), of(2)).superset(of(1)));
    silent(LIGHT_BEFORE_HEAVY, session().superset(a, b));
    costs(LIGHT_BEFORE_HEAVY, 1, session().superset(of(2), of(3)));
    costs(LIGHT_BEFORE_HEAVY, 2, session().superset(of(1)).superset(null, of(3)));
    costs(LIGHT_BEFORE_HEAVY, 4, session().superset(of(1), of(2)).superset(of(3)));
  }

  @Test
  void lightBeforeHeavyCountsBothSidesOnce() {
    Exercise lightSide = exercise("light").withSides(Sides.UNILATERAL).withIntensity(1).build();
    costs(LIGHT_BEFORE_HEAVY, 2, session().bothSides(lightSide).superset(of(3)));
  }

  @Test
  void familyAgainCountsPairs() {
    Exercise cousin = exercise("cousin").withFamily("a-family").build();
    Exercise other = exercise("other").withFamily("a-family").build();
    silent(FAMILY_AGAIN, session().superset(a, b).bothSides(side));
    costs(FAMILY_AGAIN, 1, session().superset(a, cousin));
    costs(FAMILY_AGAIN, 1, session().superset(a, b).superset(null, cousin));
    costs(FAMILY_AGAIN, 3, session().superset(a, cousin).superset(other));
  }

  @Test
  void unloadedCountsPositionsWithoutTheClientsEquipment() {
    Exercise dumbbells = exercise("dumbbells").withNeed(Trade.DUMBBELL, 2).build();
    Exercise chair = exercise("chair").withNeed(Trade.CHAIR, 1).build();
    silent(UNLOADED, session().superset(a, b));
    silent(UNLOADED, owning(Trade.DUMBBELL).superset(dumbbells));
    costs(UNLOADED, 1, owning(Trade.DUMBBELL).superset(dumbbells, a));
    costs(UNLOADED, 2, owning(Trade.DUMBBELL).superset(chair, a));
    costs(UNLOADED, 2, owning(Trade.DUMBBELL).bothSides(side));
    silent(UNLOADED, owning(Trade.DUMBBELL).superset());
  }

  @Test
  void unloadedTakesWhatCarriesTheClientForNoLoad() {
    Exercise chair = exercise("chair").withNeed(Trade.CHAIR, 1).build();
    Exercise mat = exercise("mat").withNeed(Trade.MAT, 1).build();
    Exercise both = exercise("both").withNeed(Trade.CHAIR, 1).withNeed(Trade.DUMBBELL, 1).build();
    costs(UNLOADED, 1, owning(Trade.CHAIR, Trade.DUMBBELL).superset(both, chair));
    costs(UNLOADED, 2, owning(Trade.DUMBBELL, Trade.MAT, Trade.CHAIR).superset(mat, chair));
  }

  @Test
  void unloadedTakesAChairForALoadIfThereIsNothingToLift() {
    Exercise chair = exercise("chair").withNeed(Trade.CHAIR, 1).build();
    Exercise mat = exercise("mat").withNeed(Trade.MAT, 1).build();
    silent(UNLOADED, owning(Trade.CHAIR).superset(chair));
    costs(UNLOADED, 1, owning(Trade.CHAIR).superset(chair, a));
    costs(UNLOADED, 1, owning(Trade.CHAIR, Trade.MAT).superset(chair, mat));
    silent(UNLOADED, owning(Trade.MAT).superset(mat, a).superset(chair, b));
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
    silent(TOO_EASY, sessions[1]);
    silent(TOO_EASY, sessions[2]);
    costs(TOO_EASY, 1, sessions[3]);
    costs(
        TOO_EASY, 2, session().asked(p -> p.level(3)).superset(exercise("x").withLevel(1).build()));
    costs(TOO_EASY, 2, session().asked(p -> p.level(3)).superset(a).bothSides(side));
  }

  @Test
  void tooLightCountsStepsShortOfTwoAPosition() {
    silent(TOO_LIGHT, session().superset(a, b));
    silent(TOO_LIGHT, session().superset(of(1), of(3)));
    silent(TOO_LIGHT, session().superset(of(3)));
    silent(TOO_LIGHT, session().superset());
    costs(TOO_LIGHT, 1, session().superset(of(1), a));
    Exercise lightSide = exercise("light").withSides(Sides.UNILATERAL).withIntensity(1).build();
    costs(TOO_LIGHT, 1, session().bothSides(lightSide).superset(of(3), a));
    costs(TOO_LIGHT, 2, session().bothSides(lightSide));
  }

  /** 20 points after a day, 0 after 14, and 20 * (14 - days) / 13, rounded, between them. */
  @ParameterizedTest
  @CsvSource({"1, 20", "2, 18", "3, 17", "7, 11", "8, 9", "12, 3", "13, 2"})
  void usedRecentlyFallsLinearly(int days, int points) {
    costs(
        USED_RECENTLY,
        points,
        session().asked(p -> p.done(TODAY, daysAgo(days, "a"))).superset(a, b));
  }

  @ParameterizedTest
  @ValueSource(ints = {14, 15, 400, -1})
  void usedRecentlyForgetsAfterAFortnight(int days) {
    silent(USED_RECENTLY, session().asked(p -> p.done(TODAY, daysAgo(days, "a"))).superset(a, b));
  }

  @Test
  void usedRecentlyTakesTheLatestUseAndCountsBothSidesOnce() {
    silent(USED_RECENTLY, session().asked(p -> p.done(TODAY, daysAgo(1, "c"))).superset(a, b));
    costs(
        USED_RECENTLY,
        38,
        session().asked(p -> p.done(TODAY, daysAgo(1, "a"), daysAgo(2, "a", "b"))).superset(a, b));
    costs(
        USED_RECENTLY, 20, session().asked(p -> p.done(TODAY, daysAgo(1, "side"))).bothSides(side));
    costs(USED_RECENTLY, 20, session().asked(p -> p.done(TODAY, daysAgo(0, "a"))).superset(a, b));
  }

  @Test
  void usedRecentlyCountsAVariantOfWhatWasDone() {
    Exercise variant = exercise("a-heavy").withVariantOf("a").build();
    costs(
        USED_RECENTLY,
        20,
        session().asked(p -> p.done(TODAY, daysAgo(1, "a"))).superset(variant, b));
  }

  @Test
  void usedRecentlyWithoutADateMeansTheDayAfterTheLastSession() {
    Done[] done = {daysAgo(30, "a"), daysAgo(31, "b")};
    costs(USED_RECENTLY, 38, session().asked(p -> p.done(TODAY, done).undated()).superset(a, b));
  }

  private static Done daysAgo(int days, String... exercises) {
    return new Done(TODAY.minusDays(days), List.of(exercises));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a", "a-family", "a-pattern"})
  void likesRewardsExercisesFamiliesAndPatterns(String name) {
    earns(LIKES, 1, session().asked(p -> p.liking(name)).superset(a, b));
    silent(LIKES, session().asked(p -> p.liking(name)).superset(b).bothSides(side));
  }

  @Test
  void likesCountsVariantsAndBothSidesOnce() {
    Exercise variant = exercise("a-heavy").withVariantOf("a").build();
    earns(LIKES, 2, session().asked(p -> p.liking("a")).superset(variant, a));
    earns(LIKES, 1, session().asked(p -> p.liking("side")).bothSides(side));
    silent(LIKES, session().asked(p -> p.liking("a-heavy")).superset(a, b));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a", "a-family", "a-pattern"})
  void dislikesCostsExercisesFamiliesAndPatterns(String name) {
    costs(DISLIKES, 1, session().asked(p -> p.disliking(name)).superset(a, b));
    silent(DISLIKES, session().asked(p -> p.disliking(name)).superset(b));
  }

  @Test
  void dislikesCountsBothSidesOnce() {
    costs(DISLIKES, 1, session().asked(p -> p.disliking("side")).bothSides(side).superset(a, b));
  }
}
