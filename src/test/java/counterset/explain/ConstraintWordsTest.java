package counterset.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import counterset.catalogue.Catalogues;
import counterset.fixture.GivenPlans;
import counterset.fixture.Problems;
import counterset.fixture.RandomClasses;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Match;
import counterset.model.Part;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.model.Target;
import counterset.score.Constraint;
import counterset.score.Constraints;
import counterset.score.DayConstraint;
import counterset.score.Level;
import counterset.score.MatchByMatch;
import counterset.score.PlanConstraint;
import counterset.score.Told;
import counterset.score.Total;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every constraint has words for whatever may be told of it. */
class ConstraintWordsTest {

  private static final int SESSIONS = 1500;

  private static final Catalogue CATALOGUE = Catalogues.embedded();

  private static final List<Plan> PLANS =
      Stream.concat(
              LongStream.rangeClosed(1, SESSIONS)
                  .mapToObj(seed -> RandomClasses.of(CATALOGUE, seed)),
              Stream.of(tiring(), lopsided()))
          .toList();

  /**
   * What chance seldom brings: hands, back and shoulders without rest, partial ranges, and one pair
   * of leg patterns twice.
   */
  private static Plan tiring() {
    Problem problem =
        Problems.of(CATALOGUE, Region.values()).owning(Problems.two("dumbbell")).problem();
    List<List<Exercise>> supersets = new ArrayList<>();
    supersets.addAll(pairs(exercise -> exercise.traits().contains("grip-heavy")));
    supersets.addAll(pairs(exercise -> exercise.pattern().equals("hinge")));
    supersets.addAll(pairs(exercise -> exercise.pattern().equals("push")));
    supersets.addAll(pairs(exercise -> exercise.traits().contains("partial-range")));
    List<List<Exercise>> squats = pairs(exercise -> exercise.pattern().equals("squat"));
    List<List<Exercise>> hinges = pairs(exercise -> exercise.pattern().equals("hinge"));
    for (int twice = 0; twice < 2; twice++) {
      supersets.add(List.of(squats.get(0).get(twice), hinges.get(0).get(twice)));
    }
    return GivenPlans.of(problem, CATALOGUE, supersets);
  }

  /** Muscle groups asked for by name, of which one gets it all. */
  private static Plan lopsided() {
    Problem problem =
        Problems.of(CATALOGUE, Region.LOWER)
            .targets(new Target("quadriceps", 1, 1), new Target("chest", 1, 1))
            .problem();
    return GivenPlans.of(problem, CATALOGUE, pairs(exercise -> exercise.pattern().equals("squat")));
  }

  private static List<List<Exercise>> pairs(Predicate<Exercise> which) {
    List<Exercise> four =
        CATALOGUE.exercises(Part.MAIN).stream()
            .filter(exercise -> !exercise.isUnilateral())
            .filter(which)
            .limit(4)
            .toList();
    return List.of(four.subList(0, 2), four.subList(2, 4));
  }

  static List<PlanConstraint> ofSessions() {
    return Constraints.OF_SESSIONS;
  }

  static List<DayConstraint> ofWeeks() {
    return Constraints.OF_WEEKS;
  }

  @ParameterizedTest
  @MethodSource("ofSessions")
  void saysWhatItCounted(PlanConstraint constraint) {
    assertThat(constraint.topic()).matches("[A-Z][^:.]+[a-z]");
    assertThat(constraint.counted(0, List.of())).isNotBlank();
    Map<Match, Plan> found = matches(constraint);
    assertThat(constraint.counted(3, List.copyOf(found.keySet())))
        .isNotBlank()
        .doesNotContain("null", "Optional", "  ");
  }

  @ParameterizedTest
  @MethodSource("ofSessions")
  void saysWhatAMatchMeans(PlanConstraint constraint) {
    matches(constraint)
        .forEach(
            (match, plan) -> {
              Told told = Told.of(match, plan, new MatchNames(CATALOGUE));
              isClause(constraint.said(told));
              assertThat(constraint.where(match).isEmpty()).isEqualTo(match.places().isEmpty());
              if (constraint instanceof MatchByMatch apart) {
                isClause(apart.came(told));
                isClause(apart.went(told));
                assertThat(apart.came(told)).isNotEqualTo(apart.went(told));
                isClause(apart.came(told.part(1, false)));
                isClause(apart.went(told.part(1, false)));
              }
            });
  }

  @ParameterizedTest
  @MethodSource("ofSessions")
  void tellsBetterFromWorse(PlanConstraint constraint) {
    for (int amount : List.of(1, 2)) {
      String better = constraint.total(new Total(amount, true));
      String worse = constraint.total(new Total(amount, false));
      isClause(better);
      isClause(worse);
      assertThat(better).isNotEqualTo(worse);
    }
    if (constraint instanceof MatchByMatch apart) {
      assertThat(apart.became("one", "other", true).isPresent())
          .isEqualTo(apart.became("one", "other", false).isPresent());
      apart.became("one", "other", true).ifPresent(ConstraintWordsTest::isClause);
    }
  }

  @ParameterizedTest
  @MethodSource("ofSessions")
  void aRuleOrAWishSaysWhatWouldMendIt(PlanConstraint constraint) {
    if (constraint.level() == Level.SOFT) {
      assertThat(constraint.remedy()).isEmpty();
    } else {
      assertThat(constraint.remedy()).matches("[A-Z].+\\.");
    }
  }

  @ParameterizedTest
  @MethodSource("ofWeeks")
  void aConstraintOfAWeekSaysWhatItCounted(DayConstraint constraint) {
    assertThat(constraint.topic()).matches("[A-Z][^:.]+[a-z]");
    assertThat(constraint.counted(1)).startsWith("1 ").doesNotEndWith("s");
    assertThat(constraint.counted(2)).startsWith("2 ").endsWith("s");
  }

  @Test
  void idsSentencesAndTopicsTellConstraintsApart() {
    List<Constraint> all = Constraints.all();
    assertThat(all).hasSize(Constraints.OF_SESSIONS.size() + Constraints.OF_WEEKS.size());
    assertThat(all).extracting(Constraint::id).doesNotHaveDuplicates();
    assertThat(all).extracting(Constraint::sentence).doesNotHaveDuplicates();
    assertThat(all).extracting(Constraint::topic).doesNotHaveDuplicates();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Constraints.of("nonsense"))
        .withMessage("The constraint (nonsense) is not known.");
    assertThatIllegalArgumentException().isThrownBy(() -> Constraints.ofWeek("nonsense"));
  }

  /** Those of the sessions; at least one for every constraint. */
  private static Map<Match, Plan> matches(PlanConstraint constraint) {
    Map<Match, Plan> matches = new LinkedHashMap<>();
    for (Plan plan : PLANS) {
      for (Match match : plan.matches()) {
        if (Constraints.of(match) == constraint) {
          matches.putIfAbsent(match, plan);
        }
      }
    }
    assertThat(matches).as(constraint.id()).isNotEmpty();
    return matches;
  }

  private static void isClause(String words) {
    assertThat(words)
        .matches("[A-Za-z0-9].*[^.:, ]")
        .doesNotContain("null", "Optional", "  ", " ,");
  }
}
