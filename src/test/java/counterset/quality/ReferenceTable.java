package counterset.quality;

import counterset.catalogue.Catalogues;
import counterset.intake.GivenPlan;
import counterset.intake.Readers;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.search.Effort;
import counterset.search.Limit;
import counterset.search.SessionPlanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * References beside the program's own plans, in points by constraint and in features: tells which
 * definition wants what no coach does. By command; an argument names a folder of plans, one a
 * request, called {@code 1.json} and so on, in place of new ones. Also writes what the catalogue
 * lacks.
 */
public final class ReferenceTable {

  private static final String VERSION = "quality";

  private ReferenceTable() {}

  /** Writes {@code table.txt}, {@code unnamed.txt} and {@code data-faults.txt}. */
  public static void main(String[] args) throws IOException {
    Catalogue catalogue = Catalogues.embedded();
    List<Mapped> references = Mapped.all(catalogue);
    List<TableRow> rows = new ArrayList<>();
    for (Mapped mapped : references) {
      Optional<Plan> plan = plan(mapped, args, catalogue);
      if (plan.isPresent() && !mapped.exercises().isEmpty()) {
        rows.add(new TableRow(mapped, mapped.judged(catalogue), judged(plan.get(), catalogue)));
      }
    }
    Reports.tell("unnamed.txt", Unnamed.of(References.all(), new ReferenceNames(catalogue)).text());
    Reports.tell("data-faults.txt", DataFaults.text(references, catalogue));
    Reports.tell("table.txt", new TableText(rows, references).text());
  }

  private static Optional<Plan> plan(Mapped mapped, String[] args, Catalogue catalogue) {
    if (args.length == 0) {
      return mapped.problem().map(it -> planned(it, catalogue));
    }
    Path file = Path.of(args[0], mapped.reference().number() + ".json");
    return Files.exists(file)
        ? Optional.of(GivenPlan.of(Readers.plans(catalogue).read(file), catalogue, VERSION).plan())
        : Optional.empty();
  }

  /** As {@code counterset plan} does it. */
  static Plan planned(Problem problem, Catalogue catalogue) {
    return new SessionPlanner(catalogue, VERSION).plan(problem, Limit.of(Effort.STANDARD));
  }

  /** What a plan holds, whole supersets only. */
  static Judged judged(Plan plan, Catalogue catalogue) {
    int size = plan.problem().clock().perSuperset();
    List<Exercise> exercises =
        plan.session().supersets().stream()
            .map(it -> it.exercises())
            .filter(it -> it.size() == size)
            .flatMap(List::stream)
            .toList();
    return Judged.of(plan.problem(), catalogue, exercises);
  }
}
