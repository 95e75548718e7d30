package counterset.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import counterset.fixture.Entries;
import counterset.json.InvalidInputException;
import counterset.json.Json;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A journal as a file that people and programs may find in any state. */
class JournalTest {

  private static final String LINE = line(1);

  @TempDir Path folder;
  private Path file;
  private Journal journal;

  @BeforeEach
  void open() {
    file = folder.resolve("anna.jsonl");
    journal = new Journal(file);
  }

  private static String line(int number) {
    return Json.line(EntryJson.write(Entries.full(number)));
  }

  private void write(String text) throws IOException {
    Files.writeString(file, text);
  }

  private List<String> faults() {
    InvalidInputException e = catchThrowableOfType(InvalidInputException.class, journal::read);
    return e.violations().stream().map(Object::toString).map(this::withoutFolder).toList();
  }

  private String withoutFolder(String text) {
    return text.replace(folder + "/", "");
  }

  @Test
  void whatIsAppendedIsRead() throws IOException {
    journal.append(Entries.full(1));
    journal.append(Entries.rated("2026-02-01", 0));
    journal.append(Entries.lifted("2026-04-01", "goblet-squat", 7.25, 1, 1000));
    assertThat(journal.read().entries())
        .containsExactly(
            Entries.rated("2026-02-01", 0),
            Entries.full(1),
            Entries.lifted("2026-04-01", "goblet-squat", 7.25, 1, 1000));
    assertThat(journal.read().leftOut()).isEmpty();
    assertThat(Files.readString(file)).startsWith(LINE + "\n").endsWith("}\n").hasLineCount(3);
  }

  @Test
  void entriesOfOneDayKeepTheirOrder() {
    Entry first = Entries.rated("2026-03-02", 8);
    Entry second = Entries.rated("2026-03-02", 3);
    journal.append(first);
    journal.append(second);
    assertThat(journal.read().entries()).containsExactly(first, second);
  }

  @Test
  void oneLineAnEntryWhateverTheTextsHold() {
    assertThat(LINE).doesNotContain("\n").startsWith("{\"entry\":1,\"date\":");
  }

  @Test
  void anEmptyFileIsAJournalWithoutEntries() throws IOException {
    write("");
    assertThat(journal.read()).isEqualTo(new Reading(List.of(), List.of()));
  }

  @Test
  void anUnterminatedLineThatIsWholeCounts() throws IOException {
    write(LINE);
    assertThat(journal.read().entries()).containsExactly(Entries.full(1));
    journal.append(Entries.full(2));
    assertThat(journal.read().entries()).containsExactly(Entries.full(1), Entries.full(2));
    assertThat(Files.readString(file)).isEqualTo(LINE + "\n" + line(2) + "\n");
  }

  @Test
  void blankLinesCarriageReturnsAndAByteOrderMarkAreHarmless() throws IOException {
    write("\uFEFF" + LINE + "\r\n\r\n \n" + line(2) + "\r\n");
    assertThat(journal.read().entries()).containsExactly(Entries.full(1), Entries.full(2));
  }

  @Test
  void aLineMarkedByHandIsLeftOut() throws IOException {
    write(LINE + " #cut\n" + line(2) + "\n");
    assertThat(journal.read().entries()).containsExactly(Entries.full(2));
    assertThat(journal.read().leftOut()).containsExactly(1);
  }

  @Test
  void aNoteThatEndsWithTheMarkIsNotTakenForIt() throws IOException {
    Path other = folder.resolve("other.jsonl");
    write(LINE.replace("closes here", "closes here #cut") + "\n");
    Files.writeString(other, LINE + "\n");
    assertThat(journal.read().entries()).hasSameSizeAs(new Journal(other).read().entries());
    assertThat(journal.read().leftOut()).isEmpty();
  }

  @Test
  void damageInTheMiddleIsAnErrorWithItsLineAndRemedyAndAllAtOnce() throws IOException {
    write(
        LINE
            + "\n"
            + LINE.substring(0, 40)
            + "\n"
            + LINE.replace("\"minutes\":20", "\"minuets\":20")
            + "\nhello\n"
            + LINE.replace("2026-03-02", "2026-02-30")
            + "\n");
    assertThat(faults())
        .hasSize(5)
        .allMatch(fault -> fault.endsWith("Mend the line, or end it with #cut to leave it out."));
    assertThat(faults().get(0)).startsWith("anna.jsonl:2: ").contains("ends too early");
    assertThat(faults().subList(1, 3))
        .anyMatch(f -> f.startsWith("anna.jsonl:3 /minutes: The property (minutes) is missing."))
        .anyMatch(f -> f.contains("(minuets) is not known here. Maybe \"minutes\"?"));
    assertThat(faults().get(3)).startsWith("anna.jsonl:4: ");
    assertThat(faults().get(4)).startsWith("anna.jsonl:5 /date: The date (2026-02-30) is not in");
  }

  @Test
  void aLastLineThatIsNoBeginningOfAnEntryIsAnError() throws IOException {
    for (String tail : List.of("hello", "{\"plan\":1", "{\"plan\":1}", "[1", "{\"entry\":2}")) {
      write(LINE + "\n" + tail);
      assertThat(faults()).isNotEmpty().allMatch(fault -> fault.startsWith("anna.jsonl:2"));
    }
  }

  @Test
  void aFileThatIsNoJournalIsNotAddedTo() throws IOException {
    write("{\"plan\":1}");
    assertThat(
            catchThrowableOfType(
                InvalidInputException.class, () -> journal.append(Entries.full(1))))
        .isNotNull();
    assertThat(Files.readString(file)).isEqualTo("{\"plan\":1}");
  }

  @Test
  void anEntryThatCouldNotBeReadAgainIsNotWritten() {
    for (Entry entry :
        List.of(
            Entries.lifted("2026-03-02", "goblet-squat", 10, 1001),
            Entries.lifted("2026-03-02", "Goblet squat", 10, 10),
            Entries.lifted("2026-03-02", "goblet-squat", 0, 10))) {
      assertThat(catchThrowableOfType(InvalidInputException.class, () -> journal.append(entry)))
          .isNotNull();
    }
    assertThat(file).doesNotExist();
  }

  @Test
  void zerosAfterAPowerCutAreACutLine() throws IOException {
    for (String tail : List.of("\0\0\0", "{\"ent\0\0", LINE.substring(0, 90) + "\0")) {
      write(LINE + "\n" + tail);
      assertThat(journal.read().leftOut()).containsExactly(2);
      journal.append(Entries.full(2));
      assertThat(journal.read().entries()).containsExactly(Entries.full(1), Entries.full(2));
    }
  }

  @Test
  void notUtf8() throws IOException {
    byte[] latin =
        (LINE.replace("\u00e9t\u00e9", "?\u00e9") + "\n").getBytes(StandardCharsets.ISO_8859_1);
    Files.write(file, latin);
    assertThat(faults())
        .containsExactly(
            "anna.jsonl:1: The line is not UTF-8 text. Mend the line, or end it with #cut to leave"
                + " it out.");
  }

  @Test
  void aMissingFileNamesItsNeighbour() throws IOException {
    Files.writeString(folder.resolve("ana.jsonl"), "");
    assertThat(faults()).containsExactly("anna.jsonl: There is no such file. Maybe \"ana.jsonl\"?");
  }

  @Test
  void aMissingFolderAndAFolderCannotBeWritten() {
    for (Path path : List.of(folder.resolve("none").resolve("a.jsonl"), folder)) {
      InvalidInputException e =
          catchThrowableOfType(
              InvalidInputException.class, () -> new Journal(path).append(Entries.full(1)));
      assertThat(e.getMessage())
          .startsWith(path + ": The journal cannot be written (")
          .endsWith("). Maybe choose another folder.")
          .doesNotContain("Exception");
    }
  }
}
