package counterset.journal;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.fixture.Entries;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several writers at once, and writers that are killed. */
class JournalWritersTest {

  private static final int PATIENCE_SECONDS = 120;

  @TempDir Path folder;

  @Test
  void threadsAtOnceLoseAndMixNothing() throws Exception {
    Path file = folder.resolve("log.jsonl");
    int threads = 8;
    int each = 15;
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Callable<Void>> work = new ArrayList<>();
      for (int t = 0; t < threads; t++) {
        int first = t * each;
        work.add(
            () -> {
              for (int i = first; i < first + each; i++) {
                new Journal(file).append(Entries.full(i));
                new Journal(file).read();
              }
              return null;
            });
      }
      for (Future<Void> done : pool.invokeAll(work)) {
        done.get();
      }
    } finally {
      pool.shutdownNow();
    }
    assertThat(numbers(file)).containsExactlyInAnyOrderElementsOf(range(threads * each));
    assertThat(Files.readAllLines(file)).hasSize(threads * each);
  }

  @Test
  void processesAtOnceLoseAndMixNothing() throws Exception {
    Path file = folder.resolve("log.jsonl");
    int each = 60;
    List<Process> processes = new ArrayList<>();
    for (int p = 0; p < 3; p++) {
      processes.add(JournalWriter.start(file, p * each, each, folder.resolve("said" + p)));
    }
    for (int i = 3 * each; i < 4 * each; i++) {
      new Journal(file).append(Entries.full(i));
      assertThat(new Journal(file).read().entries()).isNotEmpty();
    }
    for (Process process : processes) {
      assertThat(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
      assertThat(process.exitValue()).as(Files.readString(folder.resolve("errors"))).isZero();
    }
    assertThat(numbers(file)).containsExactlyInAnyOrderElementsOf(range(4 * each));
    assertThat(Files.readAllLines(file)).hasSize(4 * each);
    assertThat(new Journal(file).read().leftOut()).isEmpty();
  }

  /** Two writers at a time; one of them is killed at a random moment, over and over. */
  @Test
  void aKilledProcessTakesNothingWithItThatItSaidWasThere() throws Exception {
    long seed = 20260302;
    Random random = new Random(seed);
    Path file = folder.resolve("log.jsonl");
    List<Integer> acknowledged = new ArrayList<>();
    for (int kill = 0; kill < 8; kill++) {
      Path said = folder.resolve("said" + kill);
      int first = 100_000 * (kill + 1);
      Process process = JournalWriter.start(file, first, 99_000, said);
      while (process.isAlive() && JournalWriter.said(said).isEmpty()) {
        Thread.sleep(2);
      }
      Thread.sleep(random.nextInt(25), random.nextInt(1_000_000));
      new Journal(file).append(Entries.full(kill));
      acknowledged.add(kill);
      process.destroyForcibly();
      assertThat(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
      List<Integer> more = JournalWriter.said(said);
      assertThat(more).as(Files.readString(folder.resolve("errors"))).isNotEmpty();
      acknowledged.addAll(more);
      List<Integer> there = numbers(file);
      assertThat(there).as("seed %d, kill %d", seed, kill).containsAll(acknowledged);
      assertThat(there).as("seed %d, kill %d", seed, kill).doesNotHaveDuplicates();
      assertThat(there.size() - acknowledged.size()).isLessThanOrEqualTo(kill + 1);
    }
  }

  private static List<Integer> numbers(Path file) throws IOException {
    return new Journal(file)
        .read().entries().stream()
            .map(entry -> Integer.valueOf(entry.title().replace("Entry ", "")))
            .toList();
  }

  private static List<Integer> range(int end) {
    return IntStream.range(0, end).boxed().toList();
  }
}
