package counterset.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import counterset.model.At;
import counterset.model.MainLift;
import counterset.model.Match;
import counterset.model.Plan;
import counterset.model.Track;
import counterset.report.ClassPlans;
import counterset.report.Plans;
import counterset.score.Constraint;
import counterset.score.Constraints;
import counterset.score.DayConstraint;
import counterset.score.Level;
import counterset.score.MatchByMatch;
import counterset.score.PlanConstraint;
import counterset.score.Told;
import counterset.score.Total;
import counterset.score.TrackConstraint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every constraint has words for whatever may be told of it. */
class ConstraintWordsTest {

  private static final Plan PLAN = ClassPlans.good();

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
    Match match = matches(constraint).get(0);
    assertThat(constraint.counted(3, List.of(match, match)))
        .isNotBlank()
        .doesNotContain("null", "Optional", "  ");
  }

  @ParameterizedTest
  @MethodSource("ofSessions")
  void saysWhatAMatchMeansWhateverItIsAbout(PlanConstraint constraint) {
    for (Match match : matches(constraint)) {
      Told told = Told.of(match, PLAN, new MatchNames(Plans.CATALOGUE));
      holdsAsClause(constraint.said(told), constraint);
      holdsAsClause(constraint.where(match), constraint);
      if (constraint instanceof MatchByMatch apart) {
        for (Told part : List.of(told, told.part(1, false))) {
          holdsAsClause(apart.came(part), constraint);
          holdsAsClause(apart.went(part), constraint);
          assertThat(apart.went(part)).isNotEqualTo(apart.came(part));
        }
        apart.became("a", "b", true).ifPresent(words -> holdsAsClause(words, constraint));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("ofSessions")
  void tellsBetterFromWorse(PlanConstraint constraint) {
    for (int amount : new int[] {1, 2}) {
      String better = constraint.total(new Total(amount, true));
      String worse = constraint.total(new Total(amount, false));
      holdsAsClause(better, constraint);
      holdsAsClause(worse, constraint);
      assertThat(better).isNotEqualTo(worse);
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
  void idsAndTopicsTellConstraintsApart() {
    List<Constraint> all = Constraints.all();
    assertThat(all).extracting(Constraint::id).doesNotHaveDuplicates();
    assertThat(all).extracting(Constraint::topic).doesNotHaveDuplicates();
    assertThat(all).extracting(Constraint::sentence).doesNotHaveDuplicates();
    assertThat(all).hasSize(Constraints.OF_SESSIONS.size() + Constraints.OF_WEEKS.size());
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Constraints.of("nonsense"))
        .withMessage("The constraint (nonsense) is not known.");
    assertThatIllegalArgumentException().isThrownBy(() -> Constraints.ofWeek("nonsense"));
  }

  /** About each kind of subject, at one place, between two and at none. */
  private static List<Match> matches(PlanConstraint constraint) {
    List<Match> matches = new ArrayList<>();
    Optional<String> track =
        constraint instanceof TrackConstraint
            ? PLAN.tracks().stream().map(Track::name).findFirst()
            : Optional.empty();
    String owned = PLAN.problem().equipment().get(0).id();
    for (String subject :
        List.of("quadriceps", owned, "goblet-squat", MainLift.KNEE.id(), "nonsense")) {
      for (List<At> places :
          List.of(
              List.of(new At(1, 0)),
              List.of(new At(1, 0), new At(1, 1)),
              List.of(new At(1, 1), new At(2, 0)))) {
        matches.add(new Match(constraint.id(), 2, -2, places, Optional.of(subject), track));
      }
    }
    return matches;
  }

  private static void holdsAsClause(String words, PlanConstraint constraint) {
    assertThat(words)
        .as(constraint.id())
        .matches("[A-Za-z0-9].*[^.:, ]")
        .doesNotContain("null", "Optional", "  ", " ,");
  }

  @Test
  void everyMatchOfAClassHasItsWords() {
    Plan broken = ClassPlans.broken();
    assertThat(broken.matches()).extracting(Match::track).anyMatch(Optional::isPresent);
    Stream<String> said =
        broken.matches().stream()
            .map(
                match ->
                    Constraints.of(match)
                        .said(Told.of(match, broken, new MatchNames(Plans.CATALOGUE))));
    assertThat(said).allSatisfy(words -> assertThat(words).isNotBlank().doesNotContain("null"));
  }
}
