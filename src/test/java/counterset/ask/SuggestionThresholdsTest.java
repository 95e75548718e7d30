package counterset.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A word with few enough slips is taken for a name (see {@code Slips}); others are only shown, from
 * seven letters on, where at least half of the letters are right.
 */
class SuggestionThresholdsTest {

  private static String message(String ask) {
    List<AskFault> faults = AskFixture.read(ask).faults();
    assertThat(faults).as(ask).hasSize(1);
    return faults.get(0).message();
  }

  @ParameterizedTest
  @CsvSource({
    "mst, Not understood. Known equipment",
    "wxll, 'Not understood; maybe \"wall\"?'",
    "wxxl, Not understood. Known equipment",
    "chaxr, 'Not understood; maybe \"chair\"?'",
    "chaxx, Not understood. Known equipment",
    "bixeps, 'Not understood; maybe \"biceps\"?'",
    "tricxxs, 'Not understood, or not in the catalogue; the nearest known: \"triceps\".'",
    "trixxxs, 'Not understood, or not in the catalogue; the nearest known: \"triceps\".'",
    "trxxxxs, Not understood. Known equipment",
    "bicxxs, Not understood. Known equipment",
    "kettxxbell, 'Not understood; maybe \"kettlebell\"?'",
    "kettxxxell, 'Not understood, or not in the catalogue; the nearest known: \"kettlebell\".'",
    "kettxxxxxl, 'Not understood, or not in the catalogue; the nearest known: \"kettlebell\".'",
    "kexxxxxxll, Not understood. Known equipment",
  })
  void slips(String ask, String message) {
    assertThat(message(ask)).startsWith(message);
  }
}
