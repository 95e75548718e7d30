package counterset.model;

import static counterset.fixture.ExerciseBuilder.exercise;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import counterset.fixture.Trade;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ModelRulesTest {

  private final Exercise variant =
      exercise("goblet-squat")
          .withVariantOf("squat")
          .withFamily("squats")
          .withPattern("bend")
          .build();

  @ParameterizedTest
  @CsvSource({
    "goblet-squat, true",
    "squat, true",
    "squats, true",
    "bend, true",
    "quadriceps, false",
    "goblet, false"
  })
  void aListNamesExercisesVariantsFamiliesAndPatterns(String name, boolean named) {
    assertThat(Problem.names(Set.of("lunge", name), variant)).isEqualTo(named);
  }

  @Test
  void aVariantDoesNotNameItsBase() {
    assertThat(Problem.names(Set.of("goblet-squat"), exercise("squat").build())).isFalse();
    assertThat(Problem.names(Set.of(), variant)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "dumbbell, 1, HEAVY, true",
    "dumbbell, 2, LIGHT, true",
    "dumbbell, 3, HEAVY, false",
    "dumbbell, 1, MEDIUM, false",
    "kettlebell, 1, HEAVY, false",
    "dumbbell, 2, , true",
    "dumbbell, 3, , false"
  })
  void ownedEquipmentServesByIdCountAndLoad(
      String equipment, int count, Load load, boolean serves) {
    Owned owned = new Owned("dumbbell", 2, List.of(), EnumSet.of(Load.LIGHT, Load.HEAVY));
    assertThat(owned.serves(new Need(equipment, count, Optional.ofNullable(load))))
        .isEqualTo(serves);
  }

  @Test
  void massesAreSorted() {
    assertThat(new Owned("dumbbell", 1, List.of(10.0, 6.0), EnumSet.allOf(Load.class)).kg())
        .containsExactly(6.0, 10.0);
  }

  @Test
  void aLimitationAllowsUpToItsDemand() {
    Limitation knees = Trade.of().limitations().get("sore-knees");
    assertThat(
            knees.allows(exercise("x").withDemand(Joint.KNEE, 1).withDemand(Joint.HIP, 3).build()))
        .isTrue();
    assertThat(knees.allows(exercise("x").withDemand(Joint.KNEE, 2).build())).isFalse();
    assertThat(knees.allows(exercise("x").withTraits("jump").build())).isFalse();
    Limitation floor = Trade.of().limitations().get("no-floor");
    assertThat(floor.allows(exercise("x").withPosition(Position.SUPINE).build())).isFalse();
    assertThat(floor.allows(exercise("x").withPosition(Position.WALL).build())).isTrue();
  }

  @Test
  void aSupersetIsUnilateralWithOneExerciseOnBothSidesOnly() {
    Exercise side = exercise("side").withSides(Sides.UNILATERAL).build();
    assertThat(new Superset(1, List.of(side, side)).isUnilateral()).isTrue();
    assertThat(new Superset(1, List.of(side, variant)).isUnilateral()).isFalse();
    assertThat(new Superset(1, List.of(variant, variant)).isUnilateral()).isFalse();
    assertThat(new Superset(1, List.of(side)).isUnilateral()).isFalse();
    assertThat(new Superset(1, List.of(side, side)).distinct()).containsExactly(side);
  }

  @Test
  void setsCountIndirectOnesByHalf() {
    // Fractional counting: Pelland 2024.
    assertThat(new TargetCoverage("hamstrings", 0, 7, 1, false).sets()).isEqualTo(3.5);
    assertThat(new TargetCoverage("quadriceps", 7, 0, 1, true).sets()).isEqualTo(7);
  }

  @Test
  void impossibleValuesAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Need("dumbbell", 0, Optional.empty()));
    assertThatIllegalArgumentException().isThrownBy(() -> owned(0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Target("chest", 0, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Target("chest", 1, -1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Intervals(10, 0, 0, 0, 0, 0, 2, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Intervals(10, 0, 45, 0, 0, 0, 4, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Intervals(10, 0, 45, -1, 0, 0, 2, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Intervals(10, 0, 45, 0, 0, 0, 2, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> exercise("x").withPrimary().build());
  }

  private static Owned owned(int count) {
    return new Owned("dumbbell", count, List.of(), EnumSet.allOf(Load.class));
  }
}
