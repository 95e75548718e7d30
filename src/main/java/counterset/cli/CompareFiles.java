package counterset.cli;

import counterset.compare.Compared;
import counterset.compare.Comparison;
import counterset.model.Catalogue;
import counterset.report.html.Pictures;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Files of a comparison: itself, and a folder of the plans that can be led.
 *
 * @param files of the comparison
 * @param folder of the plans; null if they are not written
 * @param pictures of the exercises, for the pages of the plans
 */
record CompareFiles(List<String> files, String folder, Pictures pictures) {

  private static final List<String> OF_A_PLAN = List.of(".txt", ".json", ".html");

  /** Adds what is wrong with the names. */
  void check(Shell shell, List<String> faults) {
    for (String file : files) {
      if (!CompareFormats.knows(file)) {
        faults.add(
            "--write ("
                + file
                + ") has no ending that is known. Maybe one of "
                + CompareFormats.endings()
                + ".");
      }
    }
    if (folder != null && Files.isRegularFile(shell.path(folder))) {
      faults.add("--plans (" + folder + ") is a file. Name a folder.");
    }
  }

  /**
   * Writes them, whole or not at all; the last folder of a path is made if it is not there.
   *
   * @throws BadRequest if one of them cannot be written
   */
  void write(Shell shell, Comparison comparison, Catalogue catalogue) {
    Map<Path, String> texts = new LinkedHashMap<>();
    files.forEach(
        file -> texts.put(shell.path(file), CompareFormats.render(file, comparison, catalogue)));
    boolean made = false;
    if (folder != null) {
      made = make(shell.path(folder));
      comparison.feasible().forEach(it -> plan(it, shell.path(folder), texts, catalogue));
    }
    try {
      OutputFiles.write(texts);
    } finally {
      if (made) {
        deleteIfEmpty(shell.path(folder));
      }
    }
  }

  private void plan(Compared compared, Path into, Map<Path, String> texts, Catalogue catalogue) {
    for (String ending : OF_A_PLAN) {
      texts.put(
          into.resolve("option-" + compared.number() + ending),
          PlanFormats.render(ending, new Handout(compared.plan(), catalogue, pictures)));
    }
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
