package counterset.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How many slips a word may have and still be taken for a name: none below four letters, one below
 * seven, two below eleven, three from there on, by the longer of both. Further names are only
 * shown, up to half of the letters, and only for short phrases.
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
    "tricxxs, 'Not understood; maybe \"triceps\"?'",
    "kettxxbell, 'Not understood; maybe \"kettlebell\"?'",
    "kettxxxell, 'Not understood, or not in the catalogue; the nearest known: \"kettlebell\".'",
    "kettxxxxxl, 'Not understood, or not in the catalogue; the nearest known: \"kettlebell\".'",
    "kexxxxxxll, Not understood. Known equipment",
  })
  void slips(String ask, String message) {
    assertThat(message(ask)).startsWith(message);
  }
}
