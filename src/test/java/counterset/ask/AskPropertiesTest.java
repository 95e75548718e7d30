package counterset.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class AskPropertiesTest {

  private static final AskReader READER = new AskReader(AskFixture.CATALOGUE);

  private static final List<String> PIECES =
      List.of(
          ("20 min|-5 min|0|7|8 kg|two|a|pair"
                  + " of|dumbbells|dumbbell|kettlebell|light|heavy|and|with|,|;|or|no|not|without|any|sore|sore"
                  + " knees|knees|back|pain|easy on|shoulders|glutes|legs|whole body|more|focus"
                  + " on|twice|sets|of|3 sets of|times|lunges|goblet squat|squats|curl|include|must"
                  + " have|keep|3A|at|likes|hates|level|2|beginner|hard|45/30|/|45|on|off|s|min|hour|half|an|quarter|work|rest|warm-up|3"
                  + " min|cool-down|switch|rounds|straight sets|tri-sets|seed|7|compound sets|no"
                  + " equipment|nothing|but|class|class with|class:|track|someone"
                  + " with|both|together|no"
                  + " floor|+|&|-|x|lb|\u0007|\ud83d\ude00|(|)|.|:|dumbels|targets|minutes|please|wall|march|pairing|1"
                  + " hour|10|2.5|2,5")
              .split("\\|"));

  @Property
  void anyTextIsReadOrRefused(@ForAll String ask) {
    readOrRefused(ask);
  }

  @Property(tries = 3000)
  void anyPhrasesAreReadOrRefused(@ForAll("phrases") String ask) {
    readOrRefused(ask);
  }

  @Property(tries = 200)
  void everyPrefixIsReadOrRefused(@ForAll("phrases") String ask) {
    for (int end = 0; end < Math.min(ask.length(), 30); end++) {
      readOrRefused(ask.substring(0, end));
    }
  }

  @Provide
  Arbitrary<String> phrases() {
    return Arbitraries.of(PIECES)
        .list()
        .ofMinSize(1)
        .ofMaxSize(12)
        .map(pieces -> String.join(" ", pieces));
  }

  private static void readOrRefused(String ask) {
    AskReading reading = READER.read(ask);
    assertThat(reading.problem().isPresent()).isEqualTo(reading.faults().isEmpty());
    assertThat(reading.echo().isEmpty()).isEqualTo(reading.problem().isEmpty());
    assertThat(reading.faults())
        .allSatisfy(
            fault -> {
              assertThat(fault.column()).isBetween(1, Math.max(1, ask.length()));
              assertThat(fault.message()).isNotBlank();
              assertThat(fault.phrase().chars()).noneMatch(Character::isISOControl);
            });
    assertThat(READER.read(ask)).isEqualTo(reading);
  }
}
