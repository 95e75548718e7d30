package counterset.bound;

import counterset.model.Bound;
import counterset.model.Catalogue;
import counterset.model.PlanScore;
import counterset.model.Problem;
import counterset.score.Candidate;
import counterset.score.Constraints;
import counterset.score.ExerciseFilter;
import counterset.score.ExerciseRepeated;
import counterset.score.Level;
import counterset.score.PlaceConstraint;
import counterset.score.SessionFacts;
import counterset.score.SidesSplit;
import counterset.score.SupersetEmpty;
import counterset.timeline.SessionLength;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * An upper limit on the soft score of every session of a problem that breaks no rule.
 *
 * <p>Tracks only ever cost points, so they are left out: the limit holds with them too.
 */
public final class ScoreBound {

  /** How many steps the descent takes at most. */
  public static final int STEPS = 145;

  /** Sums of a session must stay below this, so that what can never happen is told apart. */
  private static final long ROOM = 1L << 28;

  private static final int FINEST = 256;

  /** Of multipliers that one candidate can have, a generous guess; more only make it coarser. */
  private static final int MULTIPLIERS = 24;

  private final SessionFacts facts;
  private final Weights weights;
  private final List<Candidate> usable;

  public ScoreBound(SessionFacts facts) {
    this.facts = facts;
    this.weights = new Weights(facts.problem());
    this.usable = facts.candidates().stream().filter(this::isUsable).toList();
  }

  /** The limit of a problem over the exercises that a planner chooses from. */
  public static ScoreBound of(Problem problem, Catalogue catalogue) {
    return new ScoreBound(
        new SessionFacts(
            problem,
            catalogue,
            new ExerciseFilter(problem, catalogue).main(),
            SessionLength.supersetsThatFit(problem.clock(), problem.minutes())));
  }

  /** The limit that a plan is held against; empty if it breaks a rule, or as below. */
  public Optional<Bound> of(PlanScore score) {
    if (!score.feasible()) {
      return Optional.empty();
    }
    OptionalInt limit = upperLimit(score.medium(), score.soft());
    return limit.isEmpty() ? Optional.empty() : Optional.of(new Bound(limit.getAsInt()));
  }

  private boolean isUsable(Candidate candidate) {
    boolean alone = candidate.unilateral() && facts.perSuperset() != 2;
    return !(alone && weights.matters(SidesSplit.class))
        && Constraints.of(PlaceConstraint.class).stream()
            .filter(constraint -> constraint.level() == Level.HARD && weights.matters(constraint))
            .allMatch(constraint -> constraint.measure(candidate) == 0);
  }

  /** As {@link #upperLimit(int, int, int)} with the usual number of steps. */
  public OptionalInt upperLimit(int medium, int soft) {
    return upperLimit(medium, soft, STEPS);
  }

  /**
   * The limit: no session with hard 0 and at least so many medium points has more soft points.
   *
   * @param medium the medium points of a plan, at most 0
   * @param soft the soft points of that plan, or less; the limit is never below it
   * @param steps how long to look for a low limit; more never give a higher one
   * @return empty if rewards are weighted too heavily to be summed up
   */
  public OptionalInt upperLimit(int medium, int soft, int steps) {
    int scale = scale();
    if (!weights.isBounded() || scale == 0) {
      return OptionalInt.empty();
    }
    long budget = -(long) medium;
    boolean holes = weights.inFull(SupersetEmpty.class) <= budget;
    Network network = new Network(facts, usable, weights, scale, holes);
    Terms all = new Terms(facts, weights, scale);
    Wishes wishes = all.wishes(budget, holes);
    boolean once = weights.matters(ExerciseRepeated.class);
    Memory memory = new Memory(wishes, facts.candidates(), once);
    List<Term> terms = all.of(wishes);
    Relaxation relaxation = new Relaxation(facts, network, terms, memory, weights);
    long limit = new Descent(relaxation, scale).run(steps, (long) soft * scale);
    return OptionalInt.of(Math.toIntExact(Math.max(soft, Math.floorDiv(limit, scale))));
  }

  private int scale() {
    long place =
        (long) (MULTIPLIERS * Descent.LARGEST) + 100L * weights.heaviest() * facts.clock().rounds();
    long session = place * facts.supersets() * facts.perSuperset();
    return session == 0 ? FINEST : (int) Math.min(FINEST, Long.highestOneBit(ROOM / session));
  }
}
