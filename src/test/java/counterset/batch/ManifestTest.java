package counterset.batch;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.batch.Outcome.Figures;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ManifestTest {

  @TempDir Path folder;

  private static Finished finished(String file, String fingerprint) {
    return new Finished(
        fingerprint,
        new Outcome(
            file,
            Status.PLANNED,
            Optional.of(new Figures(0, -1, 12, 1195, 20, 5, 6)),
            "wishes unmet \u00fc",
            List.of("a", "b")));
  }

  @Test
  void whatIsAddedIsReadAgainAndTheLastCounts() throws IOException {
    Manifest manifest = new Manifest(folder);
    assertThat(manifest.read()).isEmpty();
    manifest.add(finished("a.json", "1"));
    manifest.add(finished("b.json", "2"));
    manifest.add(finished("a.json", "3"));
    assertThat(manifest.read())
        .hasSize(2)
        .containsEntry("a.json", finished("a.json", "3"))
        .containsEntry("b.json", finished("b.json", "2"));
    manifest.write(List.of(finished("c.json", "4")));
    assertThat(manifest.read()).containsOnlyKeys("c.json");
    assertThat(Files.list(folder)).hasSize(1);
  }

  /** A kill may leave any beginning of the last line; it costs that file and no other. */
  @Test
  void cutAnywhereTheOtherLinesStay() throws IOException {
    Manifest manifest = new Manifest(folder);
    Path file = folder.resolve(Manifest.NAME);
    manifest.add(finished("a.json", "1"));
    int first = (int) Files.size(file);
    manifest.add(finished("b.json", "2"));
    byte[] whole = Files.readAllBytes(file);
    for (int cut = first; cut < whole.length - 1; cut++) {
      Files.write(file, Arrays.copyOf(whole, cut));
      assertThat(manifest.read().keySet()).as("cut at %d", cut).contains("a.json");
      manifest.add(finished("c.json", "3"));
      assertThat(manifest.read().keySet()).as("cut at %d", cut).contains("a.json", "c.json");
    }
  }

  @Test
  void fingerprintsTellTextsApart() {
    assertThat(Fingerprint.of(List.of("ab", "c"))).isNotEqualTo(Fingerprint.of(List.of("a", "bc")));
    assertThat(Fingerprint.of(new byte[] {1}, List.of("a")))
        .isEqualTo(Fingerprint.of(new byte[] {1}, List.of("a")))
        .isNotEqualTo(Fingerprint.of(new byte[] {2}, List.of("a")))
        .hasSize(64);
  }
}
