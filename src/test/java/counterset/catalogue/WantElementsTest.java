package counterset.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import counterset.json.InvalidInputException;
import counterset.model.Catalogue;
import counterset.model.MovementPattern;
import counterset.model.Wants;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a catalogue says that sessions want. */
class WantElementsTest {

  @TempDir Path folder;
  @TempDir Path more;
  private SmallCatalogue small;

  @BeforeEach
  void aSquatForTheLegs() {
    small =
        SmallCatalogue.in(folder)
            .with(
                "patterns.json",
                """
                [{"id": "knee-bend", "name": "squat", "group": "knee", "big": true, "patterns": ["squat"], "pairs": ["arms"]},
                 {"id": "arms", "name": "arms", "group": "push", "families": ["press"]}]
                """)
            .with(
                "regions.json",
                "[{\"id\": \"lower\", \"shares\": {\"knee-bend\": 60, \"arms\": 5}}]");
  }

  @Test
  void areRead() {
    Catalogue catalogue = Catalogues.load(folder);
    Wants wants = catalogue.wants();
    assertThat(wants.sharesOf("lower")).isEqualTo(Map.of("knee-bend", 60, "arms", 5));
    assertThat(wants.sharesOf("upper")).isEmpty();
    MovementPattern squat = wants.patternOf(catalogue.exercises().get("squat")).orElseThrow();
    assertThat(squat.id()).isEqualTo("knee-bend");
    assertThat(squat.big()).isTrue();
    assertThat(squat.group()).isEqualTo(MovementPattern.Group.KNEE);
    assertThat(squat.pairs()).containsExactly("arms");
    assertThat(wants.patterns().get(1).big()).isFalse();
  }

  @Test
  void mayBeLeftOut() {
    small.without("patterns.json").without("regions.json");
    assertThat(Catalogues.load(folder).wants()).isEqualTo(Wants.NOTHING);
  }

  @Test
  void aPairMustBeKnown() {
    small.with(
        "patterns.json",
        "[{\"id\": \"knee-bend\", \"name\": \"squat\", \"group\": \"knee\", \"pairs\": [\"knee-bent\"]},"
            + " {\"id\": \"arms\", \"name\": \"arms\", \"group\": \"push\"}]");
    assertThat(fault())
        .contains("patterns.json:1 /0/pairs/0: ", "(knee-bent) is not known. Maybe \"knee-bend\"?");
  }

  @Test
  void aShareMustBeOfAKnownPattern() {
    small.with("regions.json", "[{\"id\": \"lower\", \"shares\": {\"hinge\": 60}}]");
    assertThat(fault())
        .contains("regions.json:1 /0/shares/hinge: The movement pattern (hinge) is not in");
  }

  @Test
  void aRegionOrMuscleMustBeKnown() {
    for (String id : new String[] {"lower", "whole", "core", "quadriceps"}) {
      small.with("regions.json", "[{\"id\": \"" + id + "\", \"shares\": {\"arms\": 60}}]");
      assertThat(Catalogues.load(folder).wants().sharesOf(id)).containsEntry("arms", 60);
    }
    small.with("regions.json", "[{\"id\": \"lowest\", \"shares\": {\"arms\": 60}}]");
    assertThat(fault()).contains("regions.json:1 /0/id: ", "(lowest) is not known.");
  }

  /** A coach's own catalogue may say other shares, and put patterns before those that are there. */
  @Test
  void anAdditionComesFirst() {
    Catalogue base = Catalogues.load(folder);
    SmallCatalogue.empty(more)
        .with(
            "patterns.json",
            "[{\"id\": \"deep\", \"name\": \"deep\", \"group\": \"knee\", \"patterns\": [\"squat\"], \"pairs\": [\"arms\"]}]")
        .with("regions.json", "[{\"id\": \"lower\", \"shares\": {\"deep\": 80, \"arms\": 10}}]");
    Catalogue both = Catalogues.extend(base, more);
    assertThat(both.wants().sharesOf("lower")).isEqualTo(Map.of("deep", 80, "arms", 10));
    assertThat(both.wants().patternOf(both.exercises().get("squat")).orElseThrow().id())
        .isEqualTo("deep");
  }

  private String fault() {
    InvalidInputException e =
        catchThrowableOfType(InvalidInputException.class, () -> Catalogues.load(folder));
    assertThat(e).isNotNull();
    assertThat(e.violations()).hasSize(1);
    return e.violations().get(0).toString();
  }
}
