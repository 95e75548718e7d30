package counterset.report.vtt;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.explain.Announcement;
import counterset.explain.Announcements;
import counterset.model.Plan;
import counterset.report.Golden;
import counterset.report.Hostile;
import counterset.report.Plans;
import counterset.report.RandomPlans;
import java.time.Duration;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Captions and chapters; that they are WebVTT is for the browser tests to say. */
class CaptionsTest {

  @Test
  void looksAsAgreed() {
    Map<String, String> files = new LinkedHashMap<>();
    Plans.all().forEach((name, plan) -> files.put(name, Captions.of(plan, Plans.CATALOGUE)));
    Golden.check("captions", ".vtt", files);
  }

  @TestFactory
  Stream<DynamicTest> cuesFollowEachOtherWithinTheirIntervals() {
    return Stream.iterate(1L, seed -> seed + 1)
        .limit(60)
        .map(seed -> DynamicTest.dynamicTest("seed " + seed, () -> inOrder(RandomPlans.of(seed))));
  }

  private static void inOrder(Plan plan) {
    List<Read> cues = cues(Captions.of(plan, Plans.CATALOGUE));
    long before = 0;
    for (Read cue : cues) {
      assertThat(cue.start).isGreaterThanOrEqualTo(before);
      assertThat(cue.end).isGreaterThan(cue.start);
      assertThat(cue.text.lines()).hasSizeBetween(1, 2).noneMatch(String::isBlank);
      before = cue.end;
    }
    assertThat(before).isLessThanOrEqualTo(plan.totals().seconds() * 1000L);
    for (Announcement announcement : Announcements.of(plan, Plans.CATALOGUE)) {
      long begin = announcement.interval().start() * 1000L;
      assertThat(cues).as("a cue at " + begin).anyMatch(cue -> cue.start == begin);
    }
  }

  @Test
  void chaptersCoverTheSession() {
    Plan plan = Plans.legs();
    List<Read> chapters = cues(Chapters.of(plan));

    assertThat(chapters).hasSize(10);
    assertThat(chapters.get(2).text).contains("Superset 1: Goblet squat and Dumbbell");
    long before = 0;
    for (Read chapter : chapters) {
      assertThat(chapter.start).isEqualTo(before);
      before = chapter.end;
    }
    assertThat(before).isEqualTo(plan.totals().seconds() * 1000L);
  }

  /** WebVTT, 4.1: neither a cue nor a note may hold an arrow; a cue's text holds no tag. */
  @Test
  void whateverTheCatalogueSaysIsText() {
    String file = Captions.of(Hostile.plan(), Hostile.catalogue());

    assertThat(file.lines().filter(line -> line.contains("-->")))
        .allMatch(line -> line.matches("[0-9:.]{12} --> [0-9:.]{12}"));
    assertThat(file).doesNotContain("<script").contains("&lt;script&gt;");
  }

  private static List<Read> cues(String file) {
    assertThat(file).startsWith("WEBVTT\n\n");
    Matcher cue = Pattern.compile("\\n([0-9:.]{12}) --> ([0-9:.]{12})\n((?:.+\n)+)").matcher(file);
    return cue.results()
        .map(read -> new Read(millis(read.group(1)), millis(read.group(2)), read.group(3)))
        .toList();
  }

  private static long millis(String time) {
    return Duration.between(LocalTime.MIN, LocalTime.parse(time)).toMillis();
  }

  private record Read(long start, long end, String text) {}
}
