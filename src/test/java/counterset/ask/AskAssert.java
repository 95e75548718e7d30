package counterset.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;

/** What the tables of asks are checked with. */
final class AskAssert {

  private AskAssert() {}

  static void means(String ask, String meaning) {
    AskReading reading = AskFixture.read(ask);
    assertThat(reading.faults()).as(ask).isEmpty();
    assertThat(ProblemText.of(reading.problem().orElseThrow())).as(ask).isEqualTo(meaning);
  }

  /** The expected text is "column:phrase -> part of the message"; dollar signs separate several. */
  static void fails(String ask, String expected) {
    AskReading reading = AskFixture.read(ask);
    List<String> wanted = List.of(expected.split(" \\$ "));
    String all = reading.faults().stream().map(Object::toString).collect(Collectors.joining("\n"));
    assertThat(reading.problem()).as(ask).isEmpty();
    assertThat(reading.echo()).as(ask).isEmpty();
    assertThat(reading.faults()).as(all).hasSize(wanted.size());
    for (int i = 0; i < wanted.size(); i++) {
      AskFault fault = reading.faults().get(i);
      String[] parts = wanted.get(i).split(" -> ");
      assertThat(fault.column() + ":" + fault.phrase()).as(all).isEqualTo(parts[0].strip());
      assertThat(fault.message()).as(all).contains(parts[1].strip());
    }
  }
}
