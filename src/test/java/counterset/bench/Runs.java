package counterset.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** The runs of one command as a process of its own, its own processes included. */
final class Runs {

  private final List<String> command;
  private final List<Long> nanos = new ArrayList<>();
  private long peakKibibytes;

  Runs(List<String> command) {
    this.command = command;
  }

  /** Runs it to the end. The turn that does not count is also run once more, for the memory. */
  void turn(boolean counts) throws IOException, InterruptedException {
    long start = System.nanoTime();
    int status = start().waitFor();
    long taken = System.nanoTime() - start;
    if (status != 0) {
      throw new IllegalStateException("The command " + command + " ended with " + status + ".");
    }
    if (counts) {
      nanos.add(taken);
    } else {
      watchMemory();
    }
  }

  double medianMillis() {
    return nanos.stream().sorted().skip(nanos.size() / 2).findFirst().orElseThrow() / 1e6;
  }

  /** The sum over the processes of the highest that each has had. */
  long peakMebibytes() {
    return peakKibibytes / 1024;
  }

  private Process start() throws IOException {
    return new ProcessBuilder(command)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  private void watchMemory() throws IOException, InterruptedException {
    Process process = start();
    do {
      long sum =
          Stream.concat(Stream.of(process.toHandle()), process.descendants())
              .mapToLong(each -> peak(each.pid()))
              .sum();
      peakKibibytes = Math.max(peakKibibytes, sum);
    } while (!process.waitFor(5, TimeUnit.MILLISECONDS));
  }

  private static long peak(long pid) {
    try (Stream<String> lines = Files.lines(Path.of("/proc/" + pid + "/status"))) {
      return lines
          .filter(line -> line.startsWith("VmHWM:"))
          .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
          .sum();
    } catch (IOException | java.io.UncheckedIOException e) {
      return 0; // It has ended meanwhile.
    }
  }
}
