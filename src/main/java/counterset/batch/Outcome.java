package counterset.batch;

import counterset.model.PlanScore;
import java.util.List;
import java.util.Optional;

/**
 * What came of one file.
 *
 * @param file its name in the folder
 * @param figures of the plan; none for a file that could not be read
 * @param note a few words; empty if there is nothing to say
 * @param faults what is wrong with the file or stands in the way of its plan, one line each
 */
public record Outcome(
    String file, Status status, Optional<Figures> figures, String note, List<String> faults) {

  public Outcome {
    faults = List.copyOf(faults);
  }

  /**
   * A plan in figures.
   *
   * @param seconds from the first to the last, of all sessions
   * @param minutes the cap of all sessions
   * @param covered how many targets have the direct sets asked for
   * @param targets how many there are
   */
  public record Figures(
      int hard, int medium, int soft, int seconds, int minutes, int covered, int targets) {

    /** The figures of a plan with this score. */
    public static Figures of(PlanScore score, int seconds, int minutes, int covered, int targets) {
      return new Figures(
          score.hard(), score.medium(), score.soft(), seconds, minutes, covered, targets);
    }
  }
}
