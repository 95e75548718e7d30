package counterset.intake;

import counterset.ask.AskFault;
import counterset.ask.AskReader;
import counterset.ask.AskReading;
import counterset.compare.CompareEntry;
import counterset.json.InvalidInputException;
import counterset.json.JsonDocument;
import counterset.json.JsonFiles;
import counterset.json.Violation;
import counterset.model.Catalogue;
import counterset.problem.PlanFileReader;
import counterset.problem.ProblemReader;
import counterset.problem.WeekReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what is to be compared: plan files, problem files and asks; gathers all their faults. */
public final class CompareSources {

  private final Catalogue catalogue;
  private final Path folder;
  private final String version;
  private final ProblemReader problems;
  private final PlanFileReader plans;
  private final AskReader asks;
  private final List<String> inputs;
  private final List<String> faults = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  /**
   * A reader.
   *
   * @param inputs all that are to be read, as they were given
   * @param folder what relative paths start from
   * @param version of this program
   */
  public CompareSources(Catalogue catalogue, List<String> inputs, Path folder, String version) {
    this.folder = folder;
    this.version = version;
    this.catalogue = catalogue;
    this.problems = Readers.problems(catalogue);
    this.plans = Readers.plans(catalogue);
    this.asks = new AskReader(catalogue);
    this.inputs = List.copyOf(inputs);
  }

  /** What is wrong with those that were read. */
  public List<String> faults() {
    return faults;
  }

  /** What is worth saying of those that were read: how asks were read, plans that have changed. */
  public List<String> notes() {
    return notes;
  }

  /** Reads all; those with faults are left out. */
  public List<CompareEntry> read() {
    List<CompareEntry> entries = new ArrayList<>();
    for (int i = 0; i < inputs.size(); i++) {
      String words = inputs.get(i);
      (Request.isFile(words, folder) ? file(words) : ask(words, i + 1)).ifPresent(entries::add);
    }
    return entries;
  }

  private Optional<CompareEntry> file(String name) {
    try {
      JsonDocument document = JsonFiles.read(folder.resolve(name));
      if (WeekReader.isWeek(document)) {
        faults.add(
            name
                + ": This is a week; sessions are compared. Maybe write its days to a folder with"
                + " week --write DIR/, and name two of them.");
        return Optional.empty();
      }
      if (!PlanFileReader.isPlan(document)) {
        return Optional.of(CompareEntry.planned(label(name), problems.read(document, "")));
      }
      GivenPlan given = GivenPlan.of(plans.read(document), catalogue, version);
      noteChanges(name, given);
      return Optional.of(
          new CompareEntry(label(name), given.file().problem(), Optional.of(given.plan())));
    } catch (InvalidInputException e) {
      faults.addAll(e.violations().stream().map(Violation::toString).toList());
      return Optional.empty();
    }
  }

  /** Without its folders, unless another file has the same name. */
  private String label(String name) {
    String last = last(name);
    return inputs.stream().filter(it -> last(it).equals(last)).count() == 1 ? last : name;
  }

  private static String last(String name) {
    return name.substring(1 + Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')));
  }

  /** A plan from another catalogue or version may be worth something else today. */
  private void noteChanges(String name, GivenPlan given) {
    if (!given.differences().isEmpty()) {
      notes.add(
          name
              + ": the file says otherwise than its session works out to with this catalogue; what"
              + " it works out to is compared. counterset check "
              + name
              + " says where.");
    }
  }

  private static String quoted(AskFault fault) {
    return fault.phrase().isBlank() ? "" : " (" + fault.phrase() + ")";
  }

  private Optional<CompareEntry> ask(String words, int number) {
    AskReading reading = asks.read(words);
    boolean only = inputs.size() == 1;
    String which = only ? "ask" : "ask " + number;
    reading
        .faults()
        .forEach(
            it -> faults.add(which + ", column " + it.column() + quoted(it) + ": " + it.message()));
    Optional<Assumptions> all =
        reading.problem().map(problem -> Assumptions.of(reading, problem, catalogue));
    List<String> echo = all.map(Assumptions::echo).orElse(reading.echo());
    if (only) {
      echo.forEach(line -> notes.add("Read as: " + line));
    } else if (all.isPresent()) {
      notes.add("Option " + number + " read as: " + String.join("; ", echo));
    }
    return all.map(it -> CompareEntry.planned(words, it.problem()));
  }
}
