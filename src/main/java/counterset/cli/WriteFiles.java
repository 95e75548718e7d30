package counterset.cli;

import counterset.json.BadRequest;
import counterset.report.file.Handout;
import counterset.report.file.Kinds;
import counterset.report.file.WeekHandout;
import counterset.report.file.WholeFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The files that are named with {@code --write}. */
final class WriteFiles {

  /** A recording is of one session. */
  private static final String RECORDED = ".vtt";

  private WriteFiles() {}

  /** Adds what is wrong with the names of files. */
  static void check(List<String> files, Kinds<?> kinds, List<String> faults) {
    for (String file : files) {
      if (!kinds.knows(file)) {
        faults.add(
            "--write ("
                + file
                + ") has no ending that is known. Maybe one of "
                + kinds.endings()
                + ".");
      }
    }
  }

  /** Adds what is wrong with the names of files and folders for weeks. */
  static void checkWeek(List<String> files, Shell shell, List<String> faults) {
    for (String file : files) {
      if (!isFolder(file, shell) && !WeekHandout.KINDS.knows(file)) {
        faults.add(
            "--write ("
                + file
                + ") is neither a file that ends with one of "
                + WeekHandout.KINDS.endings()
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
  }

  private static boolean isFolder(String file, Shell shell) {
    return file.endsWith("/") || Files.isDirectory(shell.path(file));
  }

  /**
   * Refuses files that need the day of the session where it is not known.
   *
   * @throws BadRequest if there is one
   */
  static void needDay(List<String> files, Optional<LocalDate> day) {
    List<String> faults =
        files.stream()
            .filter(file -> day.isEmpty() && Handout.isDated(file))
            .map(
                file ->
                    "--write ("
                        + file
                        + ") needs the day of the session. Maybe add --date 2026-03-02.")
            .toList();
    if (!faults.isEmpty()) {
      throw new BadRequest(faults);
    }
  }

  /**
   * Writes a plan, whole or not at all.
   *
   * @throws BadRequest if a file cannot be written, or needs a day that is not known
   */
  static void write(List<String> files, Handout plan, Shell shell) {
    needDay(files, plan.day());
    Map<Path, String> texts = new LinkedHashMap<>();
    files.forEach(file -> texts.put(shell.path(file), Handout.KINDS.render(file, plan)));
    WholeFiles.write(texts);
  }

  /**
   * Writes weeks, whole or not at all; the last folder of a path is made if it is not there.
   *
   * @throws BadRequest if a file cannot be written
   */
  static void write(List<String> files, WeekHandout weeks, Shell shell) {
    Map<Path, String> texts = new LinkedHashMap<>();
    List<Path> folders = new ArrayList<>();
    for (String file : files) {
      Path path = shell.path(file);
      if (isFolder(file, shell)) {
        folders.add(path);
        texts.putAll(weeks.sessions(path));
      } else {
        texts.put(path, WeekHandout.KINDS.render(file, weeks));
      }
    }
    WholeFiles.write(texts, folders);
  }
}
