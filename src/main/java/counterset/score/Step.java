package counterset.score;

import counterset.model.Pairing;
import counterset.timeline.Handling;
import counterset.timeline.Kit;

/**
 * The way from one exercise to the next, as constraints look at it, with what is in use in between.
 * It is moved from one to the next.
 */
public final class Step {

  private final Kit kit;
  private final int roomInside;
  private final int roomInRest;
  private final boolean samePairIsAsked;
  private final boolean narrow;
  private Candidate before;
  private Candidate after;
  private boolean inside;
  private boolean firstRound;
  private int items;
  private int seconds;

  public Step(SessionFacts facts) {
    kit = facts.kit();
    roomInside = Kit.roomInside(facts.clock());
    roomInRest = Kit.roomInRest(facts.clock());
    narrow = facts.isNarrow();
    samePairIsAsked = facts.problem().pairing() == Pairing.COMPOUND;
  }

  /**
   * Looks at a step.
   *
   * @param inUse what is in use before it, as bits of the kit
   * @param inside whether both exercises are of one superset and round
   * @param firstRound whether the next exercise is done for the first time here
   */
  public void look(
      Candidate before, Candidate after, long inUse, boolean inside, boolean firstRound) {
    this.before = before;
    this.after = after;
    this.inside = inside;
    this.firstRound = firstRound;
    Handling next = after.handling();
    items = kit.inHand(inUse, next);
    seconds = kit.seconds(inUse, before.handling(), next);
  }

  /** The exercise that was done. */
  public Candidate before() {
    return before;
  }

  /** The exercise that comes. */
  public Candidate after() {
    return after;
  }

  /** Whether both are of one superset and round, with no rest between. */
  public boolean isInside() {
    return inside;
  }

  /**
   * Whether what the two exercises ask of the body counts: once, not again in later rounds, and not
   * from one side of an exercise to the other.
   */
  public boolean isNew() {
    return firstRound && !(inside && before == after && after.unilateral());
  }

  /** Whether the coach asked for one muscle group twice running. */
  public boolean isSameMuscleAsked() {
    return samePairIsAsked;
  }

  /** Whether so few movement patterns are wanted that the same muscles must come again. */
  public boolean isNarrow() {
    return narrow;
  }

  /** Items taken up or put away, without those that stand ready. */
  public int items() {
    return items;
  }

  /** Seconds that it takes. */
  public int seconds() {
    return seconds;
  }

  /** Seconds that there are for it. */
  public int room() {
    return inside ? roomInside : roomInRest;
  }

  /** Whether one goes down to the floor. */
  public boolean goesDown() {
    return !before.floor() && after.floor();
  }
}
