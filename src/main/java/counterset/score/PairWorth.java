package counterset.score;

/**
 * What it is worth that one exercise follows another inside a superset, looked at by themselves:
 * with nothing in use but what the first one needs. Tells a search what to try first. Safe to share
 * among threads.
 */
public final class PairWorth {

  private final Tables tables;
  private final Rules<SupersetConstraint> supersets;
  private final Rules<StepConstraint> steps;
  private final SessionFacts facts;

  public PairWorth(SessionFacts facts) {
    tables = Tables.of(facts);
    supersets = Rules.weighed(SupersetConstraint.class, facts);
    steps = Rules.weighed(StepConstraint.class, facts);
    this.facts = facts;
  }

  /** Soft points for what follows, its own costs included. */
  public int of(Candidate first, Candidate next) {
    int[] points = {0};
    Group group = new Group(facts, 2);
    Step step = new Step(facts);
    group.look(new Candidate[] {first, next}, 0);
    for (int i = 0; i < supersets.size(); i++) {
      Rule rule = supersets.rule(i);
      if (rule.level() == Level.SOFT) {
        supersets
            .constraint(i)
            .measure(group, (amount, one, other) -> points[0] += amount * rule.perUnit());
      }
    }
    step.look(first, next, first.handling().needs(), true, true);
    for (int i = 0; i < steps.size(); i++) {
      if (steps.rule(i).level() == Level.SOFT) {
        points[0] += steps.constraint(i).measure(step) * steps.rule(i).perUnit();
      }
    }
    int soft = Level.SOFT.ordinal();
    return points[0]
        + tables.ofExercise[next.index()][soft]
        + tables.ofPosition[next.index()][soft];
  }
}
