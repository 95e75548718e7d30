package counterset.report.vtt;

import counterset.explain.Announcement;
import counterset.explain.Announcements;
import counterset.model.Catalogue;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Plan;
import java.util.ArrayList;
import java.util.List;

/**
 * What the coach says, as captions: each sentence when its interval begins, cut into pieces that
 * can be read in time, and the last five seconds counted where there is room.
 *
 * <p>Two lines of 37 characters, 15 characters a second: common practice of subtitling, no source.
 */
public final class Captions {

  private static final int LINE = 37;
  private static final int LINES = 2;
  private static final int MILLISECONDS_A_CHARACTER = 1000 / 15;
  private static final int LEAST_MILLISECONDS = 1000;
  private static final int COUNTDOWN_SECONDS = 5;

  private Captions() {}

  /** The text of a {@code .vtt} file. A note at its head lists the chapters. */
  public static String of(Plan plan, Catalogue catalogue) {
    StringBuilder file = new StringBuilder("WEBVTT\n\n");
    file.append("NOTE\n").append(Chapters.list(plan)).append("\n");
    int number = 1;
    for (Announcement announcement : Announcements.of(plan, catalogue)) {
      for (Cue cue : cues(announcement)) {
        file.append(cue.block(number++)).append("\n");
      }
    }
    return file.toString();
  }

  private static List<Cue> cues(Announcement announcement) {
    List<String> pieces = new ArrayList<>();
    for (String sentence : announcement.withoutCountdown()) {
      pieces.addAll(Pieces.of(sentence, LINE, LINES));
    }
    Interval interval = announcement.interval();
    long start = interval.start() * 1000L;
    long end = interval.end() * 1000L;
    long wanted = pieces.stream().mapToLong(Captions::wanted).sum();
    long countdown = end - COUNTDOWN_SECONDS * 1000L;
    boolean counts = interval.kind() != IntervalKind.SWITCH && start + wanted <= countdown;
    long room = Math.min(wanted, end - start);
    List<Cue> cues = new ArrayList<>();
    long at = 0;
    for (String piece : pieces) {
      long next = at + wanted(piece);
      cues.add(new Cue(start + at * room / wanted, start + next * room / wanted, piece));
      at = next;
    }
    if (counts) {
      cues.add(new Cue(countdown, end, "Five, four, three, two, one."));
    }
    return cues;
  }

  private static long wanted(String piece) {
    return Math.max(LEAST_MILLISECONDS, (long) piece.length() * MILLISECONDS_A_CHARACTER);
  }
}
