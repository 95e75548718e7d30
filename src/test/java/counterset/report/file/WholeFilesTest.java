package counterset.report.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterset.json.BadRequest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFilesTest {

  @TempDir private Path folder;

  @Test
  void textsAreWrittenAndFoldersMade() throws IOException {
    Path into = folder.resolve("new");
    WholeFiles.write(Map.of(into.resolve("a.txt"), "\u00e9\n"), List.of(into));
    assertThat(into.resolve("a.txt")).hasContent("\u00e9\n");
    assertThat(names(into)).containsExactly("a.txt");
  }

  @Test
  void ifOneCannotBeWrittenNoneAppears() throws IOException {
    Path into = folder.resolve("new");
    Path nowhere = folder.resolve("missing").resolve("b.txt");
    assertThatThrownBy(
            () ->
                WholeFiles.write(Map.of(folder.resolve("a.txt"), "a", nowhere, "b"), List.of(into)))
        .isInstanceOf(BadRequest.class)
        .hasMessage(nowhere + ": the folder (missing) does not exist. Maybe create it first.");
    assertThat(names(folder)).isEmpty();
  }

  @Test
  void whatAnEndedProcessHasLeftIsSweptAway() throws IOException {
    long mine = ProcessHandle.current().pid();
    long ended = Long.MAX_VALUE / 10;
    Files.writeString(folder.resolve(".a.txt." + mine + ".part"), "");
    Files.writeString(folder.resolve(".a.txt." + ended + ".part"), "");
    Files.writeString(folder.resolve("a.txt"), "");
    WholeFiles.sweep(folder);
    assertThat(names(folder)).containsExactlyInAnyOrder(".a.txt." + mine + ".part", "a.txt");
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).toList();
    }
  }
}
