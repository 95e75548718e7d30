package counterset.bound;

import counterset.model.Problem;
import counterset.model.Target;
import counterset.score.Candidate;
import counterset.score.Constraints;
import counterset.score.EquipmentUnused;
import counterset.score.ExerciseRepeated;
import counterset.score.IncludeMissing;
import counterset.score.OneSidedShare;
import counterset.score.PatternMissing;
import counterset.score.SessionFacts;
import counterset.score.SupersetEmpty;
import counterset.score.TargetUncovered;
import counterset.score.UnevenVolume;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The terms of a problem: all of its score that does not lie in a place or between neighbours. */
final class Terms {

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
    if (weights.matters(ExerciseRepeated.class)) {
      int roots = all.stream().mapToInt(Candidate::root).max().orElse(-1) + 1;
      terms.add(new Once(Counts.one(all, roots, Candidate::root)));
    }
    if (weights.matters(UnevenVolume.class)) {
      terms.add(volume());
    }
    terms.add(wishes);
    terms.add(handful());
    return terms;
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
    UnevenVolume uneven = Constraints.the(UnevenVolume.class);
    return new Volume(
        counts,
        problem.targets().stream().mapToInt(Target::emphasis).toArray(),
        (target, own, sum) -> uneven.measure(facts, target, own, sum),
        weights.of(UnevenVolume.class) * scale,
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
    for (int i = 0; i < problem.targets().size() && weights.matters(TargetUncovered.class); i++) {
      int target = i;
      int credit = (facts.needs().of(i) + rounds - 1) / rounds;
      // Where a set may be missing it is left out of the limit.
      boolean whole = weights.of(TargetUncovered.class) > budget;
      amounts.add((c, wish) -> facts.needs().credit(c, target));
      wanted.add(whole ? credit : 0);
      weight.add(weights.of(TargetUncovered.class));
    }
    for (int i = 0; i < facts.patterns().count() && weights.matters(PatternMissing.class); i++) {
      int pattern = i;
      if (facts.isWanted(i)) {
        amounts.add(
            (c, wish) -> c.merit().pattern() == pattern && c.merit().fillsPattern() ? 1 : 0);
        wanted.add(1);
        weight.add(weights.of(PatternMissing.class));
      }
    }
    for (int i = 0; i < problem.equipment().size() && weights.matters(EquipmentUnused.class); i++) {
      int item = i;
      amounts.add((c, wish) -> (int) (c.uses() >> item & 1));
      wanted.add(1);
      weight.add(weights.of(EquipmentUnused.class));
    }
    for (int i = 0; i < problem.include().size() && weights.matters(IncludeMissing.class); i++) {
      int one = i;
      amounts.add((c, wish) -> (int) (c.included() >> one & 1));
      wanted.add(1);
      weight.add(weights.of(IncludeMissing.class));
    }
    Counts counts = Counts.several(all, wanted.size(), (c, wish) -> amounts.get(wish).of(c, wish));
    return new Wishes(
        counts,
        wanted.stream().mapToInt(Integer::intValue).toArray(),
        weight.stream().mapToInt(Integer::intValue).toArray(),
        budget,
        holes ? weights.of(SupersetEmpty.class) : 0);
  }

  private Term handful() {
    return new Handful(
        facts.perSuperset() == 2 ? weights.of(OneSidedShare.class) : 0, away(), scale);
  }

  private int[] away() {
    OneSidedShare share = Constraints.the(OneSidedShare.class);
    return IntStream.rangeClosed(0, facts.supersets())
        .map(oneSided -> share.measure(facts, 0, oneSided))
        .toArray();
  }
}
