package counterset.cli;

import counterset.model.Catalogue;
import counterset.model.WeekPlan;
import counterset.problem.WeekJson;
import counterset.report.html.Pictures;
import counterset.report.json.WeekPlanJson;
import counterset.report.text.WeekSheet;
import counterset.training.LoadAdvice;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Files of planned weeks: the whole as one file of a kind that {@link WeekFormats} knows, or a
 * folder with a {@code .txt}, a {@code .json} and a {@code .html} file for each session.
 *
 * @param weeks one, or those of a block in their order
 * @param loads advice on loads by session, for a single week; empty if no journal was read
 * @param monday of the first week, if it is known
 * @param start when each session begins, if it is known
 * @param pictures of the exercises, for pages
 */
record WeekFiles(
    List<WeekPlan> weeks,
    List<List<LoadAdvice>> loads,
    Catalogue catalogue,
    Optional<LocalDate> monday,
    Optional<LocalTime> start,
    Pictures pictures) {

  /** A recording is of one session. */
  private static final String RECORDED = ".vtt";

  /** What is wrong with the names of files and folders. */
  static List<String> faults(List<String> files, Shell shell) {
    List<String> faults = new ArrayList<>();
    for (String file : files) {
      if (!isFolder(file, shell) && !WeekFormats.knows(file)) {
        faults.add(
            "--write ("
                + file
                + ") is neither a file that ends with one of "
                + WeekFormats.endings()
                + " nor a folder. Maybe write "
                + file
                + "/ for a folder with one file a session.");
      } else if (file.endsWith(RECORDED)) {
        faults.add(
            "--write ("
                + file
                + ") is for the recording of one session. Maybe plan that session by itself.");
      }
    }
    return faults;
  }

  private static boolean isFolder(String file, Shell shell) {
    return file.endsWith("/") || Files.isDirectory(shell.path(file));
  }

  /**
   * Writes them, whole or not at all; the last folder of a path is made if it is not there.
   *
   * @throws BadRequest if one of them cannot be written
   */
  void write(List<String> files, Shell shell) {
    Map<Path, String> texts = new LinkedHashMap<>();
    List<Path> folders = new ArrayList<>();
    for (String file : files) {
      if (isFolder(file, shell)) {
        folders.add(shell.path(file));
        sessions(shell.path(file), texts);
      } else {
        texts.put(shell.path(file), WeekFormats.render(file, this));
      }
    }
    List<Path> made = folders.stream().filter(WeekFiles::make).toList();
    try {
      OutputFiles.write(texts);
    } finally {
      made.forEach(WeekFiles::deleteIfEmpty);
    }
  }

  private void sessions(Path folder, Map<Path, String> texts) {
    for (int week = 0; week < weeks.size(); week++) {
      String prefix = weeks.size() == 1 ? "" : "week-" + (week + 1) + "-";
      WeekPlan plan = weeks.get(week);
      for (int i = 0; i < plan.plans().size(); i++) {
        String name = prefix + WeekJson.id(plan.problem().sessions().get(i).day());
        List<LoadAdvice> advice = loads.isEmpty() ? List.of() : loads.get(i);
        for (String ending : List.of(".txt", ".json", ".html")) {
          texts.put(
              folder.resolve(name + ending),
              PlanFormats.render(
                  name + ending,
                  new Handout(
                      plan.plans().get(i), catalogue, advice, Optional.empty(), start, pictures)));
        }
      }
    }
  }

  /** The week, or the block, as JSON. */
  String json() {
    return weeks.size() == 1
        ? WeekPlanJson.text(weeks.get(0), catalogue, loads)
        : WeekPlanJson.block(weeks, catalogue);
  }

  /** The week, or the block, as text. */
  String text(boolean colour) {
    return weeks.size() == 1
        ? WeekSheet.of(weeks.get(0), catalogue, colour, loads)
        : WeekSheet.block(weeks, catalogue, colour);
  }

  private static boolean make(Path folder) {
    try {
      return !Files.isDirectory(folder) && Files.createDirectory(folder) != null;
    } catch (IOException e) {
      // The files in it are refused with the reason.
      return false;
    }
  }

  private static void deleteIfEmpty(Path folder) {
    try {
      Files.deleteIfExists(folder);
    } catch (IOException e) {
      // It has files in it.
    }
  }
}
