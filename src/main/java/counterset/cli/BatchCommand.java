package counterset.cli;

import counterset.batch.BatchPlanner;
import counterset.batch.Finished;
import counterset.batch.InOrder;
import counterset.batch.Manifest;
import counterset.batch.NaturalOrder;
import counterset.batch.Outcome;
import counterset.batch.Status;
import counterset.intake.Readers;
import counterset.json.BadRequest;
import counterset.model.Catalogue;
import counterset.report.file.FolderResults;
import counterset.report.file.Handout;
import counterset.report.file.WholeFiles;
import counterset.report.json.BatchJson;
import counterset.report.text.BatchTable;
import counterset.search.Effort;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans every problem in a folder. */
@Command(
    name = "batch",
    description =
        "Plans every problem file (.json) in a folder, week files included, over all cores. What is"
            + " finished and unchanged is kept, so a run that was stopped goes on where it was.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Exit status: 0 every file is planned; 1 internal error, or a result cannot be written; 2 bad",
      "usage, or a file is broken; 3 a file has no feasible session. The lowest of those that apply."
    })
final class BatchCommand implements Callable<Integer> {

  private static final int MOST_JOBS = 1024;

  private final Shell shell;

  @Parameters(arity = "1", paramLabel = "DIR", description = "The folder of the problem files.")
  private String folder;

  @Mixin private final CatalogueOptions catalogues = new CatalogueOptions();

  @Option(
      names = "--into",
      paramLabel = "DIR",
      description = "The folder of the plans; without it, plans in the folder of the problems.")
  private String into;

  @Option(
      names = "--kinds",
      paramLabel = "KIND",
      split = ",",
      description = "The kinds of file to write for each problem: json (the default), txt.")
  private List<String> kinds = new ArrayList<>();

  @Option(names = "--format", paramLabel = "KIND", description = "text (a table) or json.")
  private Format format = Format.TEXT;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "A seed for all, instead of that of each file.")
  private Long seed;

  @Option(
      names = "--effort",
      paramLabel = "HOW",
      description = "quick, standard (the default) or thorough.")
  private Effort effort = Effort.STANDARD;

  @Option(
      names = "--jobs",
      paramLabel = "N",
      description = "How many files to plan at once; without it, as many as there are cores.")
  private Integer jobs;

  BatchCommand(Shell shell) {
    this.shell = shell;
  }

  @Override
  public Integer call() throws IOException {
    Path problems = shell.path(folder);
    Path results = into == null ? problems.resolve("plans") : shell.path(into);
    checkOptions(problems, results);
    Catalogue catalogue = catalogues.load(shell);
    List<Path> files = files(problems);
    if (files.isEmpty()) {
      throw new BadRequest(
          folder + ": has no file that ends with .json. Maybe name the folder of the problems.");
    }
    make(results);
    WholeFiles.sweep(results);
    Manifest manifest = new Manifest(results);
    BatchPlanner planner =
        new BatchPlanner(
            catalogue,
            Readers.problems(catalogue),
            Readers.weeks(catalogue),
            effort,
            Optional.ofNullable(seed),
            Version.current(),
            new FolderResults(
                results,
                kinds.isEmpty() ? List.of("json") : kinds.stream().distinct().toList(),
                catalogue,
                catalogues.pictures(shell)),
            manifest);
    List<BatchPlanner.Done> done = run(files, planner);
    try {
      manifest.write(
          done.stream()
              .flatMap(it -> it.fingerprint().map(f -> new Finished(f, it.outcome())).stream())
              .toList());
    } catch (IOException e) {
      // Every finished file has its line already; only their order is not the folder's.
      shell.say(results + ": " + Manifest.NAME + " is not sorted: it cannot be written anew.");
    }
    return finish(done);
  }

  private void checkOptions(Path problems, Path results) throws IOException {
    List<String> faults = new ArrayList<>();
    if (!Files.isDirectory(problems)) {
      faults.add(folder + ": is no folder. Name the folder of the problem files.");
    } else if (Files.isDirectory(results) && Files.isSameFile(problems, results)) {
      faults.add("--into (" + into + ") is the folder of the problems. Name another one.");
    }
    for (String kind : kinds) {
      if (kind.endsWith("vtt")) {
        faults.add(
            "--kinds ("
                + kind
                + ") is for the recording of one session. Maybe plan that session by itself.");
      } else if (Handout.isDated("." + kind)) {
        faults.add(
            "--kinds ("
                + kind
                + ") needs the day of each session. Maybe plan them one by one with --date.");
      } else if (!Handout.KINDS.knows("." + kind)) {
        faults.add(
            "--kinds (" + kind + ") is not known. Maybe one of " + Handout.KINDS.endings() + ".");
      }
    }
    if (jobs != null && (jobs < 1 || jobs > MOST_JOBS)) {
      faults.add("--jobs (" + jobs + ") must be from 1 to " + MOST_JOBS + ".");
    }
    if (!faults.isEmpty()) {
      throw new BadRequest(faults);
    }
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(file -> file.getFileName().toString().endsWith(".json"))
          .filter(Files::isRegularFile)
          .sorted(Comparator.comparing(file -> file.getFileName().toString(), new NaturalOrder()))
          .toList();
    }
  }

  private static void make(Path results) {
    try {
      if (!Files.isDirectory(results)) {
        Files.createDirectory(results);
      }
      if (!Files.isWritable(results)) {
        throw new BadRequest(results + ": this folder may not be written to. Maybe name another.");
      }
    } catch (IOException e) {
      throw new BadRequest(
          results + ": this folder cannot be made. Maybe make the one that it is to be in first.");
    }
  }

  private List<BatchPlanner.Done> run(List<Path> files, BatchPlanner planner) {
    boolean table = format == Format.TEXT;
    BatchProgress progress = new BatchProgress(shell, files.size());
    if (table) {
      shell.out().print(BatchTable.head(shell.colour()));
    }
    progress.show();
    return new InOrder(jobs == null ? Runtime.getRuntime().availableProcessors() : jobs)
        .all(
            files,
            file -> {
              BatchPlanner.Done done = planner.done(file);
              progress.done(done.kept());
              return done;
            },
            done -> {
              progress.clear();
              done.outcome().faults().forEach(shell::say);
              if (table) {
                shell.out().print(BatchTable.row(done.outcome(), shell.colour()));
                shell.out().flush();
              }
              progress.show();
            });
  }

  private int finish(List<BatchPlanner.Done> done) {
    List<Outcome> outcomes = done.stream().map(BatchPlanner.Done::outcome).toList();
    shell
        .out()
        .print(
            format == Format.JSON
                ? BatchJson.text(outcomes)
                : BatchTable.foot(outcomes, shell.colour()));
    shell.out().flush();
    long kept = done.stream().filter(BatchPlanner.Done::kept).count();
    if (kept > 0) {
      shell.say("Kept from an earlier run, since nothing has changed: " + kept + ".");
    }
    if (has(outcomes, Status.FAILED)) {
      return Exit.INTERNAL;
    }
    if (has(outcomes, Status.BROKEN)) {
      return Exit.BAD_INPUT;
    }
    return has(outcomes, Status.INFEASIBLE) ? Exit.INFEASIBLE : Exit.DONE;
  }

  private static boolean has(List<Outcome> outcomes, Status status) {
    return outcomes.stream().anyMatch(outcome -> outcome.status() == status);
  }
}
