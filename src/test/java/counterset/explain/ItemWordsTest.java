package counterset.explain;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Item;
import counterset.model.Load;
import counterset.model.Owned;
import counterset.model.Problem;
import counterset.report.Plans;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ItemWordsTest {

  @Test
  void massesAreTheLightestTheMiddleAndTheHeaviest() {
    ItemWords three = words(Plans.owned("dumbbell", 2, 10.0, 4.5, 7.0));
    assertThat(three.written(dumbbells(2, Load.LIGHT))).isEqualTo("two dumbbells (light, 4.5 kg)");
    assertThat(three.written(dumbbells(1, Load.MEDIUM))).isEqualTo("one dumbbell (medium, 7 kg)");
    assertThat(three.written(dumbbells(1, Load.HEAVY))).isEqualTo("one dumbbell (heavy, 10 kg)");
    assertThat(three.kg(item("mat"))).isEmpty();
  }

  @Test
  void theMiddleOfTwoIsTheUpperAndIsCalledHeavy() {
    ItemWords two = words(Plans.owned("dumbbell", 2, 6.0, 10.0));
    assertThat(two.written(dumbbells(1, Load.MEDIUM))).isEqualTo("one dumbbell (heavy, 10 kg)");
    assertThat(two.areSamePieces(dumbbells(1, Load.MEDIUM), dumbbells(2, Load.HEAVY))).isTrue();
    assertThat(two.areSamePieces(dumbbells(1, Load.LIGHT), dumbbells(1, Load.HEAVY))).isFalse();
  }

  @Test
  void oneMassNeedsNoLabel() {
    ItemWords one = words(Plans.owned("dumbbell", 2, 8.0));
    assertThat(one.written(dumbbells(2, Load.LIGHT))).isEqualTo("two dumbbells (8 kg)");
    assertThat(one.said(dumbbells(1, Load.HEAVY))).isEqualTo("one dumbbell");
    assertThat(one.areSamePieces(dumbbells(1, Load.LIGHT), dumbbells(1, Load.HEAVY))).isTrue();
  }

  @Test
  void unknownMassesKeepTheirLabels() {
    ItemWords unknown = words(Plans.owned("dumbbell", 2));
    assertThat(unknown.written(dumbbells(1, Load.MEDIUM))).isEqualTo("one dumbbell (medium)");
    assertThat(unknown.areSamePieces(dumbbells(1, Load.LIGHT), dumbbells(1, Load.HEAVY))).isFalse();
    assertThat(unknown.areSamePieces(dumbbells(1, Load.HEAVY), dumbbells(2, Load.HEAVY))).isTrue();
  }

  @Test
  void eachLoadMayBeAnEntryOfItsOwn() {
    ItemWords words =
        words(
            new Owned("dumbbell", 2, List.of(5.0), EnumSet.of(Load.LIGHT)),
            new Owned("dumbbell", 1, List.of(12.0), EnumSet.of(Load.HEAVY)));
    assertThat(words.written(dumbbells(2, Load.LIGHT))).isEqualTo("two dumbbells (light, 5 kg)");
    assertThat(words.kg(dumbbells(1, Load.HEAVY))).isEqualTo(OptionalDouble.of(12));
    assertThat(words.kg(dumbbells(1, Load.MEDIUM))).isEmpty();
  }

  @Test
  void otherEquipment() {
    ItemWords words = words();
    assertThat(words.said(List.of(item("mat"), item("ankle-weights"), item("sliders"))))
        .isEqualTo("a mat, ankle weights and sliders");
    assertThat(words.saidAgain(item("ankle-weights"))).isEqualTo("the ankle weights");
    assertThat(words.saidAgain(dumbbells(2, Load.HEAVY))).isEqualTo("the two heavy dumbbells");
  }

  @Test
  void changeoversInWords() {
    Exercise goblet = Plans.CATALOGUE.exercises().get("goblet-squat");
    Problem problem = problem(Plans.owned("dumbbell", 2, 6.0, 10.0), Plans.owned("mat", 1));
    HandlingWords words = new HandlingWords(problem, Plans.CATALOGUE);
    assertThat(
            words.sentences(
                Changes.of(
                    goblet,
                    "floor-press",
                    List.of(dumbbells(1, Load.HEAVY)),
                    List.of(dumbbells(2, Load.HEAVY)))))
        .containsExactly("Take up a second dumbbell.", "Down on the mat.");
    assertThat(
            words.sentences(
                Changes.of(
                    goblet,
                    "goblet-squat",
                    List.of(dumbbells(2, Load.HEAVY)),
                    List.of(dumbbells(1, Load.MEDIUM)))))
        .containsExactly("Put down one of the two heavy dumbbells.");
    assertThat(
            words.sentences(
                Changes.of(
                    goblet,
                    "hip-hinge",
                    List.of(dumbbells(2, Load.HEAVY)),
                    List.of(dumbbells(2, Load.MEDIUM), item("ankle-weights")))))
        .containsExactly("Keep the same two dumbbells and strap on ankle weights.");
    List<Item> all = List.of(dumbbells(2, Load.HEAVY), item("ankle-weights"), item("chair"));
    assertThat(
            words.sentences(
                Changes.of(goblet, "hip-hinge", all, List.of(dumbbells(1, Load.LIGHT)))))
        .containsExactly(
            "Put down the two heavy dumbbells, take off the ankle weights, clear away the chair and take up one light"
                + " dumbbell.");
  }

  private static Item dumbbells(int count, Load load) {
    return new Item(Plans.CATALOGUE.equipment().get("dumbbell"), count, Optional.of(load));
  }

  private static Item item(String id) {
    return new Item(Plans.CATALOGUE.equipment().get(id), 1, Optional.empty());
  }

  private static ItemWords words(Owned... owned) {
    return new ItemWords(problem(owned));
  }

  private static Problem problem(Owned... owned) {
    return Plans.problem("Test", 20, Intervals.EXPRESS, Set.of(), List.of(owned), "chest");
  }
}
