package counterset.cli;

import counterset.ask.Axis;
import counterset.compare.CompareEntry;
import counterset.compare.CompareRun;
import counterset.compare.Compared;
import counterset.compare.Comparison;
import counterset.intake.CompareSources;
import counterset.intake.Request;
import counterset.json.BadRequest;
import counterset.model.Catalogue;
import counterset.model.Problem;
import counterset.report.file.CompareHandout;
import counterset.report.file.WholeFiles;
import counterset.search.Effort;
import counterset.search.Limit;
import counterset.search.Options;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts plans side by side. */
@Command(
    name = "compare",
    description =
        "Puts sessions side by side: two or more plan files, problem files or asks in quotes; or one"
            + " ask or problem, varied (--vary) or planned several times (--options).",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "--vary AXIS=VALUES, said as in an ask; the axes, and how their values are separated:",
      "  minutes=15,20,30        equipment=\"dumbbells;dumbbells, ankle weights;none\"",
      "  level=1,2               limitations=\"none;sore knees;sore knees, no floor\"",
      "  rounds=1,2              targets=\"lower body;glutes, hamstrings\"",
      "  clock=45/30,40/5/30     pairing=\"opposing,compound sets,free\"",
      "  seed=1,2,3              supersets=\"straight sets,supersets,tri-sets\"",
      "",
      "Example:",
      "  counterset compare \"20 min, lower body, dumbbells\" --vary minutes=15,20,30",
      "",
      "Exit status: 0 one of them can be led; 1 internal error; 2 bad usage or bad input; 3 none can",
      "be led."
    })
final class CompareCommand implements Callable<Integer> {

  /** More than this is no choice any more. */
  private static final int MOST = 36;

  private final Shell shell;

  @Parameters(
      arity = "1..*",
      paramLabel = "WHAT",
      description = "A plan file, which is scored as it stands; a problem file or an ask, planned.")
  private List<String> inputs = new ArrayList<>();

  @Mixin private final CatalogueOptions catalogues = new CatalogueOptions();

  @Option(
      names = "--vary",
      paramLabel = "AXIS=VALUES",
      description = "Vary one ask or problem; given twice, all pairs of values. See below.")
  private List<String> vary = new ArrayList<>();

  @Option(
      names = "--options",
      paramLabel = "N",
      description =
          "Plan one ask or problem N times (2 to 9); any two plans differ in at least half of their"
              + " exercises.")
  private Integer options;

  @Option(names = "--format", paramLabel = "KIND", description = "text or json.")
  private Format format = Format.TEXT;

  @Option(
      names = "--write",
      paramLabel = "FILE",
      description =
          "Also write the comparison to a file; its ending (.txt, .json, .html) says how. May be"
              + " repeated.")
  private List<String> files = new ArrayList<>();

  @Option(
      names = "--plans",
      paramLabel = "DIR",
      description =
          "Also write each plan that can be led to this folder: option-1.txt, .json, .html.")
  private String folder;

  @Option(names = "--seed", paramLabel = "N", description = "A seed for all that is planned.")
  private Long seed;

  @Option(
      names = "--effort",
      paramLabel = "HOW",
      description = "quick, standard (the default) or thorough.")
  private Effort effort = Effort.STANDARD;

  /** What the first input asks for. */
  private String subject = "";

  CompareCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() {
    List<String> faults = new ArrayList<>();
    checkUse(faults);
    WriteFiles.check(files, CompareHandout.KINDS, faults);
    if (folder != null && Files.isRegularFile(shell.path(folder))) {
      faults.add("--plans (" + folder + ") is a file. Name a folder.");
    }
    Catalogue catalogue = catalogues.load(shell);
    CompareSources sources =
        new CompareSources(catalogue, inputs, shell.folder(), Version.current());
    List<CompareEntry> entries = read(sources, catalogue, faults);
    if (!faults.isEmpty()) {
      throw new BadRequest(faults);
    }
    List<Compared> compared = compared(entries, catalogue);
    Comparison comparison = new Comparison(title(compared.size()), compared);
    CompareHandout handout = new CompareHandout(comparison, catalogue, catalogues.pictures(shell));
    write(handout);
    print(handout, sources.notes());
    if (comparison.feasible().isEmpty()) {
      shell.say(
          "None of these can be led. counterset plan says what would free each, asked the same.");
      return Exit.INFEASIBLE;
    }
    return Exit.DONE;
  }

  private boolean isOne() {
    return !vary.isEmpty() || options != null;
  }

  private void checkUse(List<String> faults) {
    if (!vary.isEmpty() && options != null) {
      faults.add("--vary and --options do not go together. Leave one of them out.");
    }
    if (isOne() && inputs.size() > 1) {
      faults.add(
          (options == null ? "--vary" : "--options")
              + " takes one ask or problem, not "
              + inputs.size()
              + ". Maybe put the ask in quotes.");
    }
    if (!isOne() && inputs.size() < 2) {
      faults.add(
          "There is nothing to compare ("
              + inputs.get(0)
              + ") with. Name another plan, problem or ask, or vary it: --vary minutes=15,20,30.");
    }
    if (options != null && (options < 2 || options > Options.MOST)) {
      faults.add("--options (" + options + ") must be from 2 to " + Options.MOST + ".");
    }
    if (inputs.size() > MOST) {
      faults.add(inputs.size() + " sessions are too many to compare; at most " + MOST + ".");
    }
  }

  private List<CompareEntry> read(
      CompareSources sources, Catalogue catalogue, List<String> faults) {
    List<CompareEntry> entries = sources.read();
    faults.addAll(sources.faults());
    subject = entries.isEmpty() ? "" : entries.get(0).problem().title();
    if (isOne() && entries.stream().anyMatch(it -> it.plan().isPresent())) {
      faults.add(
          inputs.get(0)
              + ": This is a plan, which stands. Name the problem or the ask it came of.");
    }
    List<CompareEntry> varied =
        vary.isEmpty() ? entries : varied(entries, catalogue, faults, sources.notes());
    return seed == null ? varied : varied.stream().map(it -> it.withSeed(seed)).toList();
  }

  private List<CompareEntry> varied(
      List<CompareEntry> entries, Catalogue catalogue, List<String> faults, List<String> notes) {
    Variations variations = Variations.read(vary, catalogue);
    faults.addAll(variations.faults());
    if (seed != null && variations.varies(Axis.SEED)) {
      faults.add("--seed (" + seed + ") contradicts --vary seed. Leave one of them out.");
    }
    if (!faults.isEmpty()) {
      return entries;
    }
    if (variations.size() < 2 || variations.size() > MOST) {
      faults.add(
          "--vary makes "
              + variations.size()
              + (variations.size() == 1 ? " session" : " sessions")
              + ", and 2 to "
              + MOST
              + " are compared. "
              + (variations.size() < 2 ? "Add a value." : "Leave out some values."));
      return entries;
    }
    List<CompareEntry> grid =
        variations.of(entries.get(0), !Request.isFile(inputs.get(0), shell.folder()));
    faults.addAll(variations.faults(grid));
    notes.addAll(variations.notes());
    return grid;
  }

  private List<Compared> compared(List<CompareEntry> entries, Catalogue catalogue) {
    CompareRun run = new CompareRun(catalogue, Limit.of(effort), Version.current());
    if (options == null) {
      BatchProgress progress = new BatchProgress(shell, entries.size());
      progress.show();
      List<Compared> all =
          Interruption.during(() -> run.all(entries, () -> progress.done(false)), run::stop);
      progress.clear();
      return all;
    }
    Problem problem = entries.get(0).problem();
    List<Compared> plans =
        Interruption.during(
            () ->
                Progress.during(shell, "Planning " + options, () -> run.options(problem, options)),
            run::stop);
    if (plans.size() < options && plans.get(0).plan().solver().complete()) {
      shell.say(
          "Only "
              + plans.size()
              + " of "
              + options
              + " plans: no further one differs in half of its exercises and is as full. Maybe ask"
              + " for less: other equipment, fewer minutes, fewer limitations.");
    }
    return plans;
  }

  private String title(int count) {
    return (isOne() ? subject + ": " : "")
        + count
        + (count == 1 ? " session" : " sessions side by side");
  }

  private void write(CompareHandout handout) {
    Map<Path, String> texts = new LinkedHashMap<>();
    files.forEach(file -> texts.put(shell.path(file), CompareHandout.KINDS.render(file, handout)));
    List<Path> folders = folder == null ? List.of() : List.of(shell.path(folder));
    folders.forEach(into -> texts.putAll(handout.plans(into)));
    WholeFiles.write(texts, folders);
  }

  private void print(CompareHandout handout, List<String> notes) {
    if (format == Format.JSON) {
      notes.forEach(shell::say);
      shell.out().print(handout.json());
    } else {
      notes.forEach(note -> shell.out().print(note + "\n"));
      shell.out().print(notes.isEmpty() ? "" : "\n");
      shell.out().print(handout.text(shell.colour()));
    }
    shell.out().flush();
  }
}
