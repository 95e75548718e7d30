package counterset.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterset.fixture.Problems;
import counterset.fixture.SmallWants;
import counterset.fixture.Trade;
import counterset.model.Catalogue;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.model.Target;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The shares of all that is asked for, put together. */
class WantedTest {

  private static final Catalogue CATALOGUE =
      Trade.of(
          List.of(),
          SmallWants.all(
              Map.of(
                  "lower", Map.of("squat", 60, "hinge", 40),
                  "upper", Map.of("push", 50, "pull", 50),
                  "core", Map.of("brace", 80),
                  "whole", Map.of("squat", 10, "jump", 30),
                  "quadriceps", Map.of("squat", 90),
                  "calves", Map.of("calf", 80),
                  "chest", Map.of("push", 90, "squat", 10))));

  private static Problem regions(Region... regions) {
    return Problems.of(CATALOGUE, regions).problem();
  }

  private static Problem muscles(Target... targets) {
    return Problems.of(CATALOGUE, Region.LOWER).targets(targets).problem();
  }

  /** All of the legs, some groups of them more than others, and other targets. */
  private static Problem legs(Map<String, Integer> emphases, Target... others) {
    List<Target> legs =
        regions(Region.LOWER).targets().stream()
            .map(it -> new Target(it.muscle(), emphases.getOrDefault(it.muscle(), 1), 1))
            .toList();
    List<Target> all = new ArrayList<>(legs);
    all.addAll(Arrays.asList(others));
    return muscles(all.toArray(Target[]::new));
  }

  private static void shares(Problem problem, String pattern, double share) {
    assertThat(Wanted.of(problem, CATALOGUE).share(pattern)).isCloseTo(share, within(1e-9));
  }

  @Test
  void aRegionHasItsOwnShares() {
    shares(regions(Region.LOWER), "squat", 0.6);
    shares(regions(Region.LOWER), "hinge", 0.4);
    shares(regions(Region.LOWER), "push", 0);
    shares(regions(Region.LOWER), "unheard-of", 0);
  }

  @Test
  void twoRegionsShareAlike() {
    shares(regions(Region.LOWER, Region.CORE), "squat", 0.3);
    shares(regions(Region.LOWER, Region.CORE), "brace", 0.4);
  }

  @Test
  void aMuscleGroupHasItsOwnSharesUnlessItsWholeRegionIsAskedFor() {
    shares(muscles(new Target("quadriceps", 1, 1)), "squat", 0.9);
    shares(muscles(new Target("quadriceps", 1, 1), new Target("calves", 1, 1)), "squat", 0.45);
    shares(muscles(new Target("quadriceps", 1, 1), new Target("calves", 1, 1)), "calf", 0.4);
    shares(muscles(new Target("hamstrings", 1, 1)), "squat", 0);
  }

  @Test
  void emphasisWeighsMuscleGroups() {
    shares(muscles(new Target("quadriceps", 3, 1), new Target("calves", 1, 1)), "squat", 0.675);
    shares(muscles(new Target("quadriceps", 3, 1), new Target("calves", 1, 1)), "calf", 0.2);
  }

  @Test
  void aRegionWeighsAsMuchAsTwoMuscleGroups() {
    Problem both = legs(Map.of(), new Target("chest", 1, 1));
    shares(both, "squat", 0.6 * 2 / 3 + 0.1 / 3);
    shares(both, "push", 0.9 / 3);
  }

  @Test
  void moreOfAGroupWithinARegionIsAPartOfItsOwn() {
    shares(legs(Map.of("quadriceps", 2)), "squat", 0.6 * 2 / 3 + 0.9 / 3);
    shares(legs(Map.of("quadriceps", 3)), "squat", 0.6 * 2 / 4 + 0.9 * 2 / 4);
    shares(legs(Map.of("quadriceps", 2)), "hinge", 0.4 * 2 / 3);
  }

  @Test
  void allRegionsAreTheWholeBody() {
    shares(regions(Region.values()), "squat", 0.1);
    shares(regions(Region.values()), "jump", 0.3);
    shares(regions(Region.values()), "push", 0);
    assertThat(Wanted.of(regions(Region.values()), CATALOGUE).isWhole()).isTrue();
    assertThat(Wanted.of(regions(Region.LOWER), CATALOGUE).isWhole()).isFalse();
  }

  @Test
  void onlyAllOfTheLegsAloneAreForTheLegs() {
    assertThat(Wanted.of(regions(Region.LOWER), CATALOGUE).isForLegs()).isTrue();
    assertThat(Wanted.of(regions(Region.LOWER, Region.CORE), CATALOGUE).isForLegs()).isFalse();
    assertThat(Wanted.of(muscles(new Target("quadriceps", 1, 1)), CATALOGUE).isForLegs()).isFalse();
  }

  @Test
  void aMuscleGroupComesWithItsRegionOrByName() {
    var quads = CATALOGUE.muscles().get("quadriceps");
    var chest = CATALOGUE.muscles().get("chest");
    Wanted legs = Wanted.of(legs(Map.of(), new Target("chest", 1, 1)), CATALOGUE);
    assertThat(legs.cameWithRegion(quads)).isTrue();
    assertThat(legs.cameWithRegion(chest)).isFalse();
    assertThat(Wanted.of(regions(Region.values()), CATALOGUE).cameWithRegion(chest)).isTrue();
    assertThat(Wanted.of(muscles(new Target("quadriceps", 1, 1)), CATALOGUE).cameWithRegion(quads))
        .isFalse();
  }
}
