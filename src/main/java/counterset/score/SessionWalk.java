package counterset.score;

import counterset.score.CountConstraint.Counted;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Walks the scopes of a session and tells a sink every match. {@link SessionScore} adds up the same
 * by differences.
 */
final class SessionWalk {

  private final SessionFacts facts;
  private final int perSuperset;
  private final Candidate[] places;
  private final Sink sink;
  private final Group group;

  private SessionWalk(SessionFacts facts, Candidate[] places, Sink sink) {
    this.facts = facts;
    this.perSuperset = facts.perSuperset();
    this.places = places;
    this.sink = sink;
    this.group = new Group(facts);
  }

  /**
   * Walks through a session.
   *
   * @param places the exercises by place, null where there is none
   */
  static void walk(SessionFacts facts, Candidate[] places, Sink sink) {
    SessionWalk walk = new SessionWalk(facts, places, sink);
    walk.places();
    walk.supersets();
    walk.steps();
    walk.counts();
    walk.shares();
    walk.orders();
    walk.whole();
  }

  private void match(Rule rule, int amount, int first, int second, String subject) {
    sink.match(rule, amount, first, second, subject, Sink.MAIN);
  }

  private void places() {
    Rules<PlaceConstraint> rules = Rules.all(PlaceConstraint.class, facts);
    for (int i = 0; i < rules.size(); i++) {
      PlaceConstraint constraint = rules.constraint(i);
      for (int place = 0; place < places.length; place++) {
        if (constraint.isPerPosition() ? places[place] != null : counts(place)) {
          int amount = constraint.measure(places[place]);
          if (amount > 0) {
            match(rules.rule(i), amount, place, Sink.NOWHERE, null);
          }
        }
      }
    }
  }

  private boolean counts(int place) {
    return Group.counts(places, place - place % perSuperset, place);
  }

  private void supersets() {
    Rules<SupersetConstraint> rules = Rules.all(SupersetConstraint.class, facts);
    for (int start = 0; start < places.length; start += perSuperset) {
      int at = start;
      group.look(places, start);
      for (int i = 0; i < rules.size(); i++) {
        Rule rule = rules.rule(i);
        rules
            .constraint(i)
            .measure(
                group,
                (amount, first, second) ->
                    match(rule, amount, at + first, second < 0 ? second : at + second, null));
      }
    }
  }

  private void steps() {
    Rules<StepConstraint> rules = Rules.all(StepConstraint.class, facts);
    StepWalk walk = new StepWalk(facts);
    walk.start();
    for (int index = 0; index < walk.size(); index++) {
      if (walk.go(places, index)) {
        for (int i = 0; i < rules.size(); i++) {
          int amount = rules.constraint(i).measure(walk.step);
          if (amount > 0) {
            match(rules.rule(i), amount, walk.from, walk.place(index), null);
          }
        }
      }
    }
  }

  private void counts() {
    Rules<CountConstraint> rules = Rules.all(CountConstraint.class, facts);
    for (int i = 0; i < rules.size(); i++) {
      Rule rule = rules.rule(i);
      CountConstraint constraint = rules.constraint(i);
      int tags = constraint.tags(facts);
      int[] counts = new int[tags];
      List<List<Counted>> counted = new ArrayList<>();
      for (int tag = 0; tag < tags; tag++) {
        counted.add(new ArrayList<>());
      }
      count(
          constraint,
          (tag, amount, first, second) -> {
            counts[tag] += amount;
            counted.get(tag).add(new Counted(first, second));
          });
      List<Found> found = new ArrayList<>();
      for (int t = 0; t < tags; t++) {
        int units = constraint.measure(facts, t, counts[t]);
        if (units > 0) {
          String subject = constraint.subject(facts, t);
          constraint.list(
              counted.get(t),
              units,
              (amount, first, second) -> found.add(new Found(amount, first, second, subject)));
        }
      }
      if (tags > 1) {
        found.sort(Comparator.comparingInt(Found::second).thenComparingInt(Found::first));
      }
      found.forEach(it -> match(rule, it.amount, it.first, it.second, it.subject));
    }
  }

  private record Found(int amount, int first, int second, String subject) {}

  private interface Counter {
    void count(int tag, int amount, int first, int second);
  }

  private void count(CountConstraint constraint, Counter counter) {
    switch (constraint.source()) {
      case EXERCISES -> countExercises(constraint, counter);
      case POSITIONS -> countPositions(constraint, counter);
      case SUPERSETS -> countSupersets(constraint, counter);
      case STEPS -> countSteps(constraint, counter);
    }
  }

  private void countExercises(CountConstraint constraint, Counter counter) {
    for (int p = 0; p < places.length; p++) {
      int place = p;
      if (counts(place)) {
        constraint.ofExercise(
            facts, places[place], (tag, amount) -> counter.count(tag, amount, place, Sink.NOWHERE));
      }
    }
  }

  private void countPositions(CountConstraint constraint, Counter counter) {
    for (int place = 0; place < places.length; place++) {
      if (places[place] != null) {
        counter.count(0, constraint.ofPosition(places[place]), place, Sink.NOWHERE);
      }
    }
  }

  private void countSupersets(CountConstraint constraint, Counter counter) {
    for (int first = 0; first < places.length; first += perSuperset) {
      group.look(places, first);
      counter.count(0, constraint.ofSuperset(group), first, Sink.NOWHERE);
    }
  }

  private void countSteps(CountConstraint constraint, Counter counter) {
    StepWalk walk = new StepWalk(facts);
    walk.start();
    for (int index = 0; index < walk.size(); index++) {
      if (walk.go(places, index) && constraint.ofStep(walk.step) != 0) {
        counter.count(0, constraint.ofStep(walk.step), walk.from, walk.place(index));
      }
    }
  }

  private void shares() {
    Rules<ShareConstraint> rules = Rules.all(ShareConstraint.class, facts);
    for (int i = 0; i < rules.size(); i++) {
      ShareConstraint constraint = rules.constraint(i);
      int[] counts = new int[constraint.tags(facts)];
      int all = 0;
      for (int place = 0; place < places.length; place++) {
        for (int tag = 0; tag < counts.length && counts(place); tag++) {
          counts[tag] += constraint.ofExercise(places[place], tag);
          all += constraint.ofExercise(places[place], tag);
        }
      }
      for (int tag = 0; tag < counts.length; tag++) {
        int amount = constraint.measure(facts, tag, counts[tag], all);
        if (amount > 0) {
          String subject = constraint.subject(facts, tag);
          match(rules.rule(i), amount, Sink.NOWHERE, Sink.NOWHERE, subject);
        }
      }
    }
  }

  private void orders() {
    Rules<OrderConstraint> rules = Rules.all(OrderConstraint.class, facts);
    for (int i = 0; i < rules.size(); i++) {
      OrderConstraint constraint = rules.constraint(i);
      for (int later = 0; later < places.length; later++) {
        for (int earlier = 0; earlier < later; earlier++) {
          if (counts(earlier) && counts(later)) {
            int amount =
                constraint.measure(
                    constraint.classOf(places[earlier]), constraint.classOf(places[later]));
            if (amount > 0) {
              match(rules.rule(i), amount, earlier, later, null);
            }
          }
        }
      }
    }
  }

  private void whole() {
    Rules<SessionConstraint> rules =
        Rules.all(SessionConstraint.class, facts).where(constraint -> constraint.matters(facts));
    for (int i = 0; i < rules.size(); i++) {
      Rule rule = rules.rule(i);
      rules
          .constraint(i)
          .measure(
              facts,
              places,
              (amount, place, subject) -> match(rule, amount, place, Sink.NOWHERE, subject));
    }
  }
}
