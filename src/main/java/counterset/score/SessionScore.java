package counterset.score;

/**
 * The score of a session, for a search: what the matches of a {@link Ledger} add up to, tracks
 * apart.
 *
 * <p>It works out a whole session, or what a change would make of the session last worked out: a
 * change re-reads only what it touches. It keeps scratch arrays, so an instance serves one thread.
 */
public final class SessionScore {

  private final SessionFacts facts;
  private final TagCounts tags;
  private final SupersetCells supersets;
  private final StepCells steps;
  private final ExerciseCounts exercises;
  private final Rules<SessionConstraint> whole;
  private final WholeMatches wholeMatches = new WholeMatches();
  private final Candidate[] session;
  private final Change step;
  private boolean computed;
  private final Sums base = new Sums();
  private final Sums sums = new Sums();

  public SessionScore(SessionFacts facts) {
    this.facts = facts;
    tags = new TagCounts(facts);
    supersets = new SupersetCells(facts);
    steps = new StepCells(facts);
    exercises = new ExerciseCounts(facts);
    whole =
        Rules.weighed(SessionConstraint.class, facts)
            .where(constraint -> constraint.matters(facts));
    session = new Candidate[facts.supersets() * facts.perSuperset()];
    step = new Change(session.length);
  }

  /**
   * Works out the score of a session, which changes start from until the next is worked out.
   *
   * @param places the exercises by place, null where there is none
   */
  public void compute(Candidate[] places) {
    step.clear(false);
    for (int place = 0; place < session.length; place++) {
      if (places[place] != session[place]) {
        step.put(place, places[place]);
      }
    }
    if (computed && 2 * step.size() < session.length) {
      sums.set(base);
      change(step, true);
      base.set(sums);
      tags.settle();
    } else {
      System.arraycopy(places, 0, session, 0, session.length);
      afresh();
    }
    whole();
  }

  private void afresh() {
    computed = true;
    base.clear();
    tags.clear(base);
    supersets.compute(session, tags, base);
    steps.compute(session, tags, base);
    exercises.compute(session, tags, base);
    tags.settle();
    sums.set(base);
  }

  /** Works out what a change would make of the session last computed. */
  public void tryOut(Change change) {
    sums.set(base);
    change(change, false);
    whole();
    change.exchange(session);
    tags.back();
  }

  private void change(Change change, boolean stays) {
    change.exchange(session);
    supersets.change(session, change, stays, tags, sums);
    steps.change(session, change, stays, tags, sums);
    exercises.change(session, change, stays, tags, sums);
  }

  private void whole() {
    for (int i = 0; i < whole.size(); i++) {
      wholeMatches.rule = whole.rule(i);
      whole.constraint(i).measure(facts, session, wholeMatches);
    }
  }

  /** Hard points of the session or change last worked out, at most 0. */
  public int hard() {
    return sums.hard();
  }

  /** Medium points of the session or change last worked out, at most 0. */
  public int medium() {
    return sums.medium();
  }

  /** Soft points of the session or change last worked out. */
  public int soft() {
    return sums.soft();
  }

  private final class WholeMatches implements SessionConstraint.Matches {
    private Rule rule;

    @Override
    public void match(int amount, int place, String subject) {
      sums.add(rule, amount);
    }
  }
}
