package counterset.report.file;

import counterset.json.BadRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Writes files whole or not at all: each appears under its name only when all of them are complete.
 */
public final class WholeFiles {

  private static final Pattern PART = Pattern.compile("\\..+\\.([0-9]{1,18})\\.part");

  private WholeFiles() {}

  /**
   * Writes texts.
   *
   * @throws BadRequest if one of them cannot be written; then none has appeared
   */
  public static void write(Map<Path, String> texts) {
    Map<Path, Path> parts = new LinkedHashMap<>();
    try {
      List<String> faults = new ArrayList<>();
      texts.forEach((file, text) -> part(file, text, parts, faults));
      if (!faults.isEmpty()) {
        throw new BadRequest(faults);
      }
      for (Map.Entry<Path, Path> part : parts.entrySet()) {
        move(part.getValue(), part.getKey());
      }
    } finally {
      parts.values().forEach(WholeFiles::deleteQuietly);
    }
  }

  /**
   * Writes texts, some into folders that are made where they are not there; what was made goes
   * again if nothing comes into it.
   *
   * @throws BadRequest if one of them cannot be written; then none has appeared
   */
  public static void write(Map<Path, String> texts, List<Path> folders) {
    List<Path> made = folders.stream().filter(WholeFiles::make).toList();
    try {
      write(texts);
    } finally {
      made.forEach(WholeFiles::deleteQuietly);
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

  /** Deletes the unfinished files that processes have left in a folder when they were killed. */
  public static void sweep(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      files.filter(WholeFiles::isLeftOver).forEach(WholeFiles::deleteQuietly);
    } catch (IOException e) {
      // They do no harm.
    }
  }

  private static boolean isLeftOver(Path file) {
    Matcher part = PART.matcher(file.getFileName().toString());
    return part.matches() && ProcessHandle.of(Long.parseLong(part.group(1))).isEmpty();
  }

  private static void part(Path file, String text, Map<Path, Path> parts, List<String> faults) {
    if (Files.isDirectory(file)) {
      faults.add(file + ": is a folder. Maybe name a file in it.");
      return;
    }
    Path folder = file.toAbsolutePath().getParent();
    if (!Files.isDirectory(folder)) {
      faults.add(
          file
              + ": the folder ("
              + folder.getFileName()
              + ") does not exist. Maybe create it first.");
      return;
    }
    Path part =
        folder.resolve("." + file.getFileName() + "." + ProcessHandle.current().pid() + ".part");
    try {
      parts.put(file, part);
      // Not a temporary file: those can be read by their owner only.
      Files.writeString(part, text, StandardCharsets.UTF_8);
    } catch (IOException e) {
      faults.add(file + ": cannot be written (" + reason(e) + "). Maybe choose another folder.");
    }
  }

  private static void move(Path part, Path file) {
    try {
      try {
        Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
      }
    } catch (IOException e) {
      throw new BadRequest(
          file + ": cannot be written (" + reason(e) + "). Maybe choose another folder.");
    }
  }

  private static void deleteQuietly(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // The result matters, a left-over does not; and a folder may have files in it.
    }
  }

  private static String reason(IOException e) {
    if (e instanceof FileSystemException file && file.getReason() != null) {
      return file.getReason();
    }
    return e.getClass().getSimpleName();
  }
}
