package counterset.journal;

import counterset.json.InvalidInputException;
import counterset.json.Json;
import counterset.json.JsonDocument;
import counterset.json.JsonFiles;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.locks.ReentrantLock;

/**
 * A file of entries, one JSON object a line, that is only ever added to.
 *
 * <p>An entry that {@link #append} has returned from is on the disk. A process that is killed on
 * the way leaves at most one cut line behind (see {@link CutLine}) and takes no other with it. Any
 * number of threads and processes may append at once: each holds an exclusive lock meanwhile.
 */
public final class Journal {

  /**
   * Where the lock lies: far beyond the text, because some systems do not let anyone read a locked
   * part.
   */
  private static final long LOCKED = Long.MAX_VALUE - 1;

  /**
   * Locks of files belong to the whole process, and some systems release them when it closes any
   * channel of the file, one for reading included. So within a process only one thread at a time
   * has a journal open.
   */
  private static final ReentrantLock WITHIN_PROCESS = new ReentrantLock();

  private final Path file;

  /** A journal that need not exist yet. */
  public Journal(Path file) {
    this.file = file;
  }

  /** Whether there is such a file. */
  public boolean exists() {
    return Files.exists(file);
  }

  /**
   * Reads all entries. A line that another process is about to write counts as cut short.
   *
   * @throws InvalidInputException with all faults of all lines, or if there is no such file
   */
  public Reading read() {
    WITHIN_PROCESS.lock();
    try {
      return JournalText.read(file.toString(), JsonFiles.bytes(file));
    } finally {
      WITHIN_PROCESS.unlock();
    }
  }

  /**
   * Adds an entry at the end, and the file if there is none.
   *
   * @throws InvalidInputException if that fails, or if the entry could not be read again; then it
   *     is not in the journal
   */
  public void append(Entry entry) {
    String text = Json.line(EntryJson.write(entry));
    EntryReader.read(JsonDocument.parse(file.toString(), text));
    byte[] line = (text + "\n").getBytes(StandardCharsets.UTF_8);
    WITHIN_PROCESS.lock();
    try {
      boolean isNew = !exists();
      append(line);
      if (isNew) {
        forceFolder();
      }
    } catch (IOException e) {
      throw InvalidInputException.of(
          file.toString(),
          "The journal cannot be written (" + reason(e) + "). Maybe choose another folder.");
    } finally {
      WITHIN_PROCESS.unlock();
    }
  }

  private void append(byte[] line) throws IOException {
    try (FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
      // Closing the channel releases it, as does the end of the process, however it comes.
      channel.lock(LOCKED, 1, false);
      long end = channel.size();
      byte[] before = lineEnd(Tail.read(channel));
      ByteBuffer text = ByteBuffer.allocate(before.length + line.length).put(before).put(line);
      try {
        write(channel, text.flip(), end);
        channel.force(true);
      } catch (IOException e) {
        channel.truncate(end);
        throw e;
      }
    }
  }

  private static void write(FileChannel channel, ByteBuffer text, long end) throws IOException {
    long position = end;
    while (text.hasRemaining()) {
      position += channel.write(text, position);
    }
  }

  /** What ends the last line if no line break does. */
  private byte[] lineEnd(byte[] tail) {
    if (tail.length == 0) {
      return tail;
    }
    if (CutLine.isCut(tail)) {
      return (" " + CutLine.MARK + "\n").getBytes(StandardCharsets.US_ASCII);
    }
    JournalText.read(file.toString(), tail);
    return new byte[] {'\n'};
  }

  /** So that a new file is still there after a power cut; not every system can do that. */
  private void forceFolder() {
    try (FileChannel folder =
        FileChannel.open(file.toAbsolutePath().getParent(), StandardOpenOption.READ)) {
      folder.force(true);
    } catch (IOException e) {
      // The entry itself is on the disk.
    }
  }

  private static String reason(IOException e) {
    if (e instanceof NoSuchFileException) {
      return "its folder does not exist";
    }
    if (e instanceof AccessDeniedException) {
      return "its permissions forbid it";
    }
    if (e instanceof FileSystemException system && system.getReason() != null) {
      return system.getReason();
    }
    return "the disk does not take it";
  }
}
