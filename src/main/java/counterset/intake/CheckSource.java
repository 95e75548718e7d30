package counterset.intake;

import counterset.explain.WeekWords;
import counterset.json.BadRequest;
import counterset.json.JsonDocument;
import counterset.json.JsonFiles;
import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.WeekPlan;
import counterset.model.WeekProblem;
import counterset.problem.PlanFile;
import counterset.problem.WeekPlanFile;
import counterset.problem.WeekPlanReader;
import counterset.review.Checked;
import counterset.review.CheckedWeek;
import counterset.search.Completion;
import counterset.search.SessionPlanner;
import counterset.search.WeekPlanner;
import counterset.typed.TypedFault;
import counterset.typed.TypedReader;
import counterset.typed.TypedReading;
import counterset.typed.TypedSession;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What is to be checked: a plan, the plans of a week, or a session as a coach types it. */
public final class CheckSource {

  private final Catalogue catalogue;
  private final String file;
  private final byte[] bytes;
  private final Optional<Path> path;
  private final String version;

  /**
   * A file, or what is piped in if its name is {@code -}.
   *
   * @param file as the coach wrote it
   * @param folder what relative paths start from
   * @param version of this program
   */
  public CheckSource(
      Catalogue catalogue, String file, Path folder, InputStream in, String version) {
    this.catalogue = catalogue;
    this.file = file;
    this.path = file.equals("-") ? Optional.empty() : Optional.of(folder.resolve(file));
    this.bytes = path.map(JsonFiles::bytes).orElseGet(() -> TextFiles.bytes(in, file));
    this.version = version;
  }

  /** Whether it is JSON by its name or by how it begins; anything else is typed text. */
  public boolean isJson() {
    if (file.toLowerCase(Locale.ROOT).endsWith(".json")) {
      return true;
    }
    int at = 0;
    while (at < bytes.length && (bytes[at] & 0xFF) <= ' ' || isMark(at)) {
      at++;
    }
    return at < bytes.length && bytes[at] == '{' && !startsWithRtf(at);
  }

  private boolean startsWithRtf(int at) {
    return at + 1 < bytes.length && bytes[at + 1] == '\\';
  }

  private boolean isMark(int at) {
    return at < 3 && bytes.length > 3 && (bytes[0] & 0xFF) == 0xEF;
  }

  /** The document, if it is JSON. */
  public JsonDocument document() {
    return JsonFiles.parse(path.map(Path::toString).orElse(file), bytes);
  }

  /** Whether a document is a planned week. */
  public static boolean isWeek(JsonDocument document) {
    return WeekPlanReader.isWeekPlan(document);
  }

  /** A plan file. */
  public Checked plan(JsonDocument document) {
    return checked(Readers.plans(catalogue).read(document));
  }

  /** A planned week. */
  public CheckedWeek week(JsonDocument document) {
    WeekPlanFile read = Readers.weekPlans(catalogue).read(document);
    WeekProblem problem = read.problem();
    Map<String, Checked> days = new LinkedHashMap<>();
    for (int i = 0; i < read.plans().size(); i++) {
      days.put(WeekWords.day(problem.sessions().get(i).day()), checked(read.plans().get(i)));
    }
    WeekPlan week =
        new WeekPlanner(catalogue, version)
            .score(
                problem,
                days.values().stream().map(it -> it.plan().session()).toList(),
                new SolverNote(problem.seed(), "none", version, 0, true));
    return new CheckedWeek(week, days, catalogue);
  }

  private Checked checked(PlanFile file) {
    GivenPlan given = GivenPlan.of(file, catalogue, version);
    return new Checked(given.plan(), catalogue, List.of(), List.of(), given.differences());
  }

  /**
   * A typed session.
   *
   * @param asked what it is judged by, if that was said beside it
   * @throws BadRequest with all its faults
   */
  public Checked typed(Optional<Problem> asked) {
    TypedReading reading = new TypedReader(catalogue).read(TextFiles.text(file, bytes), asked);
    if (reading.session().isEmpty()) {
      throw new BadRequest(reading.faults().stream().map(this::line).toList());
    }
    TypedSession typed = reading.session().get();
    Session session = new Completion(typed.problem(), catalogue).of(typed.session());
    SolverNote note = new SolverNote(typed.problem().seed(), "none", version, 0, true);
    Plan plan = new SessionPlanner(catalogue, version).score(typed.problem(), session, note);
    return new Checked(plan, catalogue, reading.lines(), typed.readAs(), List.of());
  }

  private String line(TypedFault fault) {
    return fault.line() == 0
        ? file + ": " + fault.message()
        : file + ", line " + fault.line() + ", column " + fault.column() + ": " + fault.message();
  }
}
