package counterset.ask;

import static counterset.ask.AskAssert.fails;
import static counterset.ask.AskAssert.means;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AskTracksTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          class with sore knees                      | tracks sore-knees
          class with sore knees and no jumping       | tracks sore-knees no-jumping
          class: sore knees; no floor                | tracks sore-knees no-floor
          class: sore knees, no floor, pregnant      | tracks sore-knees no-floor pregnancy
          a class with sore knees, no floor and no kneeling | tracks sore-knees no-floor no-kneeling
          a class with sore knees, no floor, and no kneeling | tracks sore-knees no-floor no-kneeling
          class with sore knees and wrists           | tracks sore-knees sore-wrists
          class with back and knee pain              | tracks sore-lower-back sore-knees
          class where some have sore knees           | tracks sore-knees
          group with a bad knee                      | tracks sore-knees
          tracks: pregnant                           | tracks pregnancy
          tracks sore-knees and no-jumping           | tracks sore-knees no-jumping
          clients with sore knees and no jumping     | tracks sore-knees no-jumping
          Class - sore knees                         | limits sore-knees
          """)
  void everyLimitationOfAClassIsATrack(String ask, String meaning) {
    means(ask, meaning);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          class with sore knees plus no floor together | tracks sore-knees+no-floor
          class with sore knees plus no floor        | tracks sore-knees+no-floor
          class with sore knees + no floor           | tracks sore-knees+no-floor
          class with sore knees and no floor together | tracks sore-knees+no-floor
          class with both sore knees and no floor    | tracks sore-knees+no-floor
          class: no jumping, sore knees plus no floor | tracks no-jumping sore-knees+no-floor
          class: sore knees plus no floor, pregnant  | tracks sore-knees+no-floor pregnancy
          class with sore knees plus wrists          | tracks sore-knees+sore-wrists
          someone with both sore knees and no floor  | tracks sore-knees+no-floor
          someone with sore knees and no floor       | tracks sore-knees+no-floor
          class: someone with sore knees and no floor, no jumping | tracks sore-knees+no-floor no-jumping
          class: one with sore knees, two with no floor | tracks sore-knees no-floor
          legs, two with a bad knee                  | targets lower; tracks sore-knees
          some with sore knees, others with no floor | tracks sore-knees no-floor
          some have sore knees and some have no floor | tracks sore-knees no-floor
          """)
  void whatOnePersonHasIsOneTrack(String ask, String meaning) {
    means(ask, meaning);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          no floor, class with sore knees            | limits no-floor; tracks sore-knees
          class with sore knees, dumbbells, no floor | equipment dumbbell:2; limits no-floor; tracks sore-knees
          class, sore knees                          | limits sore-knees
          class sore knees                           | limits sore-knees
          class with dumbbells, sore knees           | equipment dumbbell:2; limits sore-knees
          client with sore knees                     | limits sore-knees
          20 min for someone with sore knees and no floor | limits sore-knees no-floor
          class with sore knees, no jumping jacks    | tracks sore-knees; exclude jumping-jack
          class with sore knees and a mat            | equipment mat:1; tracks sore-knees
          30 min class, legs, dumbbells              | min 30; targets lower; equipment dumbbell:2
          class with sore knees. No floor            | limits no-floor; tracks sore-knees
          """)
  void aLimitationOutsideBindsTheWholeSession(String ask, String meaning) {
    means(ask, meaning);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          sore knees, class with bad knees | 24:bad knees -> Sore knees binds the whole session already ("sore knees"), so nobody
          no floor, class: sore knees plus no floor | 18:sore knees plus no floor -> No floor binds the whole session already
          class with sore knees and bad knees | 27:bad knees -> The class has "sore knees" already. Keep one
          class: sore knees plus no floor, no floor plus knee pain | 34:no floor plus knee pain -> The class has "sore knees plus no floor" already
          class: sore knees, no floor and no jumping together | 8:sore knees, no floor and no jumping together -> "plus"
          class with sore knees, shoulders | 24:shoulders -> may be sore or a target
          class with sore elbows           | 12:sore elbows -> Not understood
          """)
  void tracksThatCannotBe(String ask, String expected) {
    fails(ask, expected);
  }

  @Test
  void theEchoTellsTheTracks() {
    assertThat(AskFixture.read("legs, class with sore knees and no jumping").echo())
        .contains(
            "limitations: none named", "class: a modification for sore knees; one for no jumping");
    assertThat(AskFixture.read("pregnant, class: no jumping, sore knees plus no floor").echo())
        .contains(
            "limitations: pregnancy",
            "class: a modification for no jumping; one for sore knees plus no floor together");
    assertThat(AskFixture.read("legs").echo()).noneMatch(line -> line.startsWith("class"));
  }
}
