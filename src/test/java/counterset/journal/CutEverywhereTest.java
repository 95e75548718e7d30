package counterset.journal;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.fixture.Entries;
import counterset.json.Json;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A write may stop after any byte. */
class CutEverywhereTest {

  private static final List<Entry> EARLIER = List.of(Entries.full(1), Entries.full(2));

  @TempDir Path folder;

  private static byte[] lines(int... numbers) {
    StringBuilder text = new StringBuilder();
    for (int number : numbers) {
      text.append(Json.line(EntryJson.write(Entries.full(number)))).append('\n');
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void aLastLineCutAtAnyByteTakesNoOtherWithIt() throws IOException {
    byte[] whole = lines(1, 2, 3);
    int start = lines(1, 2).length;
    Path file = folder.resolve("log.jsonl");
    Journal journal = new Journal(file);
    for (int length = start; length <= whole.length; length++) {
      Files.write(file, Arrays.copyOf(whole, length));
      boolean complete = length >= whole.length - 1;
      boolean clean = complete || length == start;
      Reading reading = journal.read();
      List<Entry> before = reading.entries();
      assertThat(before.subList(0, 2)).as("cut at byte %d", length).isEqualTo(EARLIER);
      assertThat(before).as("cut at byte %d", length).hasSize(complete ? 3 : 2);
      assertThat(reading.leftOut()).isEqualTo(clean ? List.of() : List.of(3));
    }
  }

  /** The next append, itself cut at any byte, and the one after that. */
  @Test
  void appendsAfterACutStandOnLinesOfTheirOwn() throws IOException {
    byte[] whole = lines(1, 2, 3);
    int start = lines(1, 2).length;
    Path file = folder.resolve("log.jsonl");
    Journal journal = new Journal(file);
    for (int length = start; length <= whole.length; length += 13) {
      Files.write(file, Arrays.copyOf(whole, length));
      journal.append(Entries.full(4));
      byte[] repaired = Files.readAllBytes(file);
      int second = length + (repaired.length - length) / 3 + length % 5;
      for (int again : new int[] {length + 1, length + 3, length + 6, second, repaired.length}) {
        Files.write(file, Arrays.copyOf(repaired, Math.min(again, repaired.length)));
        journal.append(Entries.full(5));
        assertThat(journal.read().entries())
            .as("cut at byte %d, then at %d", length, again)
            .startsWith(EARLIER.toArray(Entry[]::new))
            .endsWith(Entries.full(5));
      }
    }
  }

  /** Nothing that was in the file goes away. */
  @Test
  void appendingOnlyAdds() throws IOException {
    byte[] whole = lines(1, 2, 3);
    Path file = folder.resolve("log.jsonl");
    for (int length = 0; length <= whole.length; length += 29) {
      byte[] cut = Arrays.copyOf(whole, length);
      Files.write(file, cut);
      new Journal(file).append(Entries.full(4));
      assertThat(Arrays.copyOf(Files.readAllBytes(file), length)).isEqualTo(cut);
    }
  }
}
