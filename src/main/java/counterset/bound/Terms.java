package counterset.bound;

import static counterset.planning.constraints.SessionConstraint.*;

import counterset.model.Problem;
import counterset.model.Target;
import counterset.score.Candidate;
import counterset.score.SessionFacts;
import java.util.ArrayList;
import java.util.List;

/** The terms of a problem: all of its score that does not lie in a place or between neighbours. */
final class Terms {

  private static final int MODERATE = 2;

  private final SessionFacts facts;
  private final Problem problem;
  private final List<Candidate> all;
  private final Weights weights;
  private final int scale;
  private final int places;

  Terms(SessionFacts facts, Weights weights, int scale) {
    this.facts = facts;
    this.problem = facts.problem();
    this.all = facts.candidates();
    this.weights = weights;
    this.scale = scale;
    this.places = facts.supersets() * facts.perSuperset();
  }

  /** The terms, the wishes among them. */
  List<Term> of(Wishes wishes) {
    List<Term> terms = new ArrayList<>();
    if (weights.matters(EXERCISE_REPEATED)) {
      int roots = all.stream().mapToInt(Candidate::root).max().orElse(-1) + 1;
      terms.add(new Once(Counts.one(all, roots, Candidate::root)));
    }
    if (weights.matters(FAMILY_AGAIN)) {
      terms.add(families());
    }
    if (weights.matters(UNEVEN_VOLUME)) {
      terms.add(volume());
    }
    terms.add(wishes);
    terms.add(handful());
    return terms;
  }

  private Term families() {
    int families = all.stream().mapToInt(Candidate::family).max().orElse(-1) + 1;
    Counts counts = Counts.one(all, families, Candidate::family);
    return new Families(counts, weights.of(FAMILY_AGAIN) * scale, places);
  }

  private Term volume() {
    int targets = problem.targets().size();
    Counts counts = Counts.several(all, targets, (c, target) -> c.halfSets()[target]);
    int mostAtOnce = 0;
    for (Candidate candidate : all) {
      int sum = 0;
      for (int half : candidate.halfSets()) {
        sum += half;
      }
      mostAtOnce = Math.max(mostAtOnce, sum);
    }
    return new Volume(
        counts,
        problem.targets().stream().mapToInt(Target::emphasis).toArray(),
        facts.clock().rounds(),
        weights.of(UNEVEN_VOLUME) * scale,
        2 * places,
        mostAtOnce * places);
  }

  /**
   * The wishes.
   *
   * @param budget medium points that may be missing
   * @param holes whether supersets may have holes
   */
  Wishes wishes(long budget, boolean holes) {
    List<Counts.Amount> amounts = new ArrayList<>();
    List<Integer> wanted = new ArrayList<>();
    List<Integer> weight = new ArrayList<>();
    int rounds = facts.clock().rounds();
    for (int i = 0; i < problem.targets().size() && weights.matters(TARGET_UNCOVERED); i++) {
      int target = i;
      int sets = problem.targets().get(i).minSets();
      // Nothing may be missing: then whole exercises count, not sets.
      boolean whole = weights.of(TARGET_UNCOVERED) > budget;
      amounts.add((c, wish) -> (c.halfSets()[target] >> 1) * (whole ? 1 : rounds));
      wanted.add(whole ? (sets + rounds - 1) / rounds : sets);
      weight.add(weights.of(TARGET_UNCOVERED));
    }
    for (int i = 0; i < problem.equipment().size() && weights.matters(EQUIPMENT_UNUSED); i++) {
      int item = i;
      amounts.add((c, wish) -> (int) (c.uses() >> item & 1));
      wanted.add(1);
      weight.add(weights.of(EQUIPMENT_UNUSED));
    }
    for (int i = 0; i < problem.include().size() && weights.matters(INCLUDE_MISSING); i++) {
      int one = i;
      amounts.add((c, wish) -> (int) (c.included() >> one & 1));
      wanted.add(1);
      weight.add(weights.of(INCLUDE_MISSING));
    }
    Counts counts = Counts.several(all, wanted.size(), (c, wish) -> amounts.get(wish).of(c, wish));
    return new Wishes(
        counts,
        wanted.stream().mapToInt(Integer::intValue).toArray(),
        weight.stream().mapToInt(Integer::intValue).toArray(),
        budget,
        holes ? weights.of(SUPERSET_EMPTY) : 0);
  }

  private Term handful() {
    return new Handful(
        all.stream().mapToInt(candidate -> MODERATE - candidate.intensity()).toArray(),
        weights.of(TOO_LIGHT),
        weights.of(FLOOR_TRIP),
        facts.perSuperset() == 2 ? weights.of(ONE_SIDED_SHARE) : 0,
        facts.supersets(),
        scale);
  }
}
