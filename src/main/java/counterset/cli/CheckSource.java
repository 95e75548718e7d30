package counterset.cli;

import counterset.json.BadRequest;
import counterset.json.JsonDocument;
import counterset.json.JsonFiles;
import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.problem.PlanFile;
import counterset.problem.PlanFileReader;
import counterset.problem.WeekPlanReader;
import counterset.report.json.PlanDifferences;
import counterset.review.Checked;
import counterset.solve.Completion;
import counterset.solve.SessionPlanner;
import counterset.typed.TypedFault;
import counterset.typed.TypedReader;
import counterset.typed.TypedReading;
import counterset.typed.TypedSession;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is to be checked: a plan, the plans of a week, or a session as a coach types it. */
final class CheckSource {

  private final Shell shell;
  private final Catalogue catalogue;
  private final String file;
  private final byte[] bytes;

  CheckSource(Shell shell, Catalogue catalogue, String file) {
    this.shell = shell;
    this.catalogue = catalogue;
    this.file = file;
    this.bytes = TextFiles.bytes(shell, file);
  }

  /** Whether it is JSON by its name or by how it begins; anything else is typed text. */
  boolean isJson() {
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
  JsonDocument document() {
    return JsonFiles.parse(file.equals("-") ? file : shell.path(file).toString(), bytes);
  }

  static boolean isWeek(JsonDocument document) {
    return WeekPlanReader.isWeekPlan(document);
  }

  /** A plan file. */
  Checked plan(JsonDocument document) {
    PlanFile read = new PlanFileReader(Request.problems(catalogue), catalogue).read(document);
    Plan plan = new Recheck(read, catalogue).plan();
    return new Checked(
        plan,
        catalogue,
        List.of(),
        List.of(),
        PlanDifferences.of(read.document(), plan, catalogue));
  }

  /**
   * A typed session.
   *
   * @param asked what it is judged by, if that was said beside it
   * @throws BadRequest with all its faults
   */
  Checked typed(Optional<Problem> asked) {
    TypedReading reading = new TypedReader(catalogue).read(TextFiles.text(file, bytes), asked);
    if (reading.session().isEmpty()) {
      throw new BadRequest(reading.faults().stream().map(this::line).toList());
    }
    TypedSession typed = reading.session().get();
    Session session = new Completion(typed.problem(), catalogue).of(typed.session());
    SolverNote note = new SolverNote(typed.problem().seed(), "none", Version.current(), 0, true);
    Plan plan =
        new SessionPlanner(catalogue, Version.current()).score(typed.problem(), session, note);
    return new Checked(plan, catalogue, reading.lines(), typed.readAs(), List.of());
  }

  private String line(TypedFault fault) {
    return fault.line() == 0
        ? file + ": " + fault.message()
        : file + ", line " + fault.line() + ", column " + fault.column() + ": " + fault.message();
  }
}
