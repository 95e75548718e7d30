package counterset.referee;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import counterset.model.Exercise;
import counterset.model.Target;
import counterset.score.Candidate;
import counterset.score.Crowded;
import counterset.score.EffortClass;
import counterset.score.Merit;
import counterset.score.PatternMissing;
import counterset.score.SameRoot;
import counterset.score.TargetUncovered;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** What a session has to have: sets of each target, and movement patterns by their share. */
record Coverage(CpModel model, Request request, Objective objective, Work work) {

  private static final long QUARTERS = 4;
  private static final Set<String> LARGE =
      Set.of(
          "quadriceps",
          "hamstrings",
          "gluteus-maximus",
          "chest",
          "upper-back",
          "shoulders",
          "abdominals");

  void charge() {
    request.problem().targets().forEach(this::chargeTarget);
    for (String pattern : request.wanted()) {
      LinearExprBuilder missing = LinearExpr.newBuilder();
      missing.addTerm(
          work.sum(c -> c.pattern().equals(pattern) && isSolid(c.merit()), choice -> 1), -1);
      missing.add(1);
      objective.charge(PatternMissing.class, Objective.atLeast(model, missing.build(), 1));
    }
    if (!request.wanted().isEmpty()) {
      chargeShares();
    }
  }

  private static boolean isWorking(Merit merit) {
    return merit.effort() != EffortClass.EASY;
  }

  private static boolean isSolid(Merit merit) {
    return isWorking(merit) && merit.standing() >= 2 && !merit.offTarget();
  }

  /**
   * A group asked for by name, or with a number of sets that is not 1, needs direct sets alone; an
   * easy one is half a set, unless nothing better trains the group. One that came with a region
   * needs a set, a small one half, and none if only exercises of last resort touch it.
   */
  private void chargeTarget(Target target) {
    boolean direct =
        target.minSets() != 1
            || !request.shares().isOfRegion(request.catalogue().muscles().get(target.muscle()));
    boolean easyIsFull =
        direct && !can(c -> halves(c.exercise(), target) == 2 && isSolid(c.merit()));
    boolean possible = can(c -> halves(c.exercise(), target) > 0 && c.merit().standing() >= 2);
    long need = QUARTERS * target.minSets();
    if (!direct) {
      need = !possible ? 0 : LARGE.contains(target.muscle()) ? QUARTERS : QUARTERS / 2;
    }
    LinearExpr credit =
        work.sum(
            choice -> !direct || halves(choice.exercise(), target) == 2,
            choice ->
                halves(choice.exercise(), target)
                    * (easyIsFull || isWorking(choice.merit()) ? 2L : 1L));
    LinearExprBuilder covered = LinearExpr.newBuilder();
    var missing = model.newIntVar(0, (need + QUARTERS - 1) / QUARTERS, "");
    covered.addTerm(missing, QUARTERS);
    covered.addTerm(credit, request.problem().clock().rounds());
    model.addGreaterOrEqual(covered.build(), need);
    objective.charge(TargetUncovered.class, missing);
  }

  private boolean can(Predicate<Candidate> which) {
    return request.usable().stream().anyMatch(which);
  }

  private static int halves(Exercise exercise, Target target) {
    if (exercise.primary().contains(target.muscle())) {
      return 2;
    }
    return exercise.secondary().contains(target.muscle()) ? 1 : 0;
  }

  /** In half places; a one-sided exercise has three of them. */
  private void chargeShares() {
    List<String> patterns = request.candidates().stream().map(request::pattern).distinct().toList();
    for (String pattern : patterns) {
      LinearExpr halves =
          work.sum(c -> c.pattern().equals(pattern), choice -> choice.oneSided() ? 3 : 2);
      objective.charge(
          Crowded.class,
          CountCost.of(model, halves, 2 * request.places(), count -> away(pattern, count)));
      chargeTooMany(pattern);
    }
  }

  /**
   * Exercises beyond the share and the first: 85 in 100 places, for legs 70; rounded up from 0.55.
   */
  private void chargeTooMany(String pattern) {
    if (request.wanted().isEmpty()) {
      return;
    }
    long unit = request.shares().unit();
    long share = request.shares().withInherited(pattern) * request.places();
    int places = request.shares().isForLegs() ? 70 : 85;
    long free = Math.max(1, (places * share + 45 * unit) / (100 * unit));
    LinearExprBuilder over = LinearExpr.newBuilder();
    over.add(work.sum(c -> c.pattern().equals(pattern), choice -> 1));
    over.add(-free);
    objective.charge(SameRoot.class, Objective.atLeast(model, over.build(), request.places()));
  }

  /** Squared half places beyond one place too many, or 1.2 places too few of what is wanted. */
  private long away(String pattern, long halves) {
    double most = due(request.shares().withInherited(pattern));
    double over = halves - most - (most > 0 ? 2 : 0);
    double under = due(request.shares().due(pattern)) - halves - 2.4;
    if (over > 0) {
      return Math.round(over * over);
    }
    return under > 0 && request.wanted().contains(pattern) ? Math.round(under * under) : 0;
  }

  private double due(long share) {
    return 2.0 * request.places() * share / request.shares().unit();
  }
}
