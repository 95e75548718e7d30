package counterset.explain;

import counterset.model.Interval;
import java.util.List;

/** What the coach says in an interval, in short sentences to be read aloud; never empty. */
public record Announcement(Interval interval, List<String> sentences) {

  public Announcement {
    sentences = List.copyOf(sentences);
  }

  /** All of it on one line. */
  public String text() {
    return String.join(" ", sentences);
  }

  /**
   * The same without the countdown, for whatever counts the last five seconds when they come and
   * not when the interval begins.
   */
  public List<String> withoutCountdown() {
    return sentences.stream().filter(sentence -> !sentence.equals(RestWords.COUNTDOWN)).toList();
  }
}
