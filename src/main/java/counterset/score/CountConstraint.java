package counterset.score;

import java.util.List;

/**
 * Sees how often something occurs in a session. What is counted has tags, numbers from 0: one for
 * each exercise, muscle group or item, say. What one tag costs depends on its own count alone, so
 * that a search need not look at the others.
 */
public abstract class CountConstraint extends PlanConstraint {

  CountConstraint(String id, Weight weight, String sentence, String unit, String topic) {
    super(id, weight, sentence, unit, topic);
  }

  /** What is counted. */
  public enum Source {
    /** Exercises, each once a superset: {@link CountConstraint#ofExercise}. */
    EXERCISES,
    /** Places, both sides of a one-sided exercise: {@link CountConstraint#ofPosition}. */
    POSITIONS,
    /** Supersets: {@link CountConstraint#ofSuperset}. */
    SUPERSETS,
    /** Steps: {@link CountConstraint#ofStep}. */
    STEPS
  }

  /** What is counted. */
  public Source source() {
    return Source.EXERCISES;
  }

  /** How many tags there are. */
  public int tags(SessionFacts facts) {
    return 1;
  }

  /** Adds what an exercise counts for, once a superset. */
  public void ofExercise(SessionFacts facts, Candidate exercise, Tags tags) {
    // Others count something else.
  }

  /** What an exercise counts for at each place, of the only tag. */
  public int ofPosition(Candidate exercise) {
    return 0;
  }

  /** What a superset counts for, of the only tag. */
  public int ofSuperset(Group superset) {
    return 0;
  }

  /** What a step counts for, of the only tag. */
  public int ofStep(Step step) {
    return 0;
  }

  /** Units for so many of a tag, at least 0. */
  public abstract int measure(SessionFacts facts, int tag, int count);

  /** The id of what a tag is about, where no place tells; else null. */
  public String subject(SessionFacts facts, int tag) {
    return null;
  }

  /** Whether it holds for a tag in what the followers of a track do as well. */
  public boolean isForTrack(SessionFacts facts, int track, int tag) {
    return false;
  }

  @Override
  public final boolean isBetweenPlaces() {
    return source() == Source.STEPS;
  }

  /**
   * Takes apart what a tag costs into matches: one, unless places tell more.
   *
   * @param counted what was counted, in order
   * @param units what the tag costs, at least 1
   */
  void list(List<Counted> counted, int units, PairMatches matches) {
    matches.match(units, Sink.NOWHERE, Sink.NOWHERE);
  }

  /**
   * Something that was counted.
   *
   * @param first the index of its place, or of the place that a step leaves
   * @param second the place that a step leads to, else {@link Sink#NOWHERE}
   */
  record Counted(int first, int second) {}

  /** Takes in what a count constraint finds. */
  interface PairMatches {

    /**
     * A match.
     *
     * @param amount at least 1
     * @param first the index of a place, or {@link Sink#NOWHERE}
     * @param second the index of another place, or {@link Sink#NOWHERE}
     */
    void match(int amount, int first, int second);
  }

  /** Takes in what an exercise counts for. */
  public interface Tags {

    /** So many of a tag; each tag at most once, the amount not 0. */
    void add(int tag, int amount);
  }
}
