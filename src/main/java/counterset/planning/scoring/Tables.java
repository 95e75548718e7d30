package counterset.planning.scoring;

import counterset.model.Pairing;
import counterset.model.Problem;
import counterset.model.Target;
import counterset.planning.Candidate;
import counterset.planning.SessionFacts;
import counterset.planning.constraints.SessionConstraint;
import java.util.ArrayList;
import java.util.List;

/** What the search needs to know of a problem, laid out in arrays by the index of a candidate. */
final class Tables {

  final int candidates;
  final int roots;
  final int families;
  final int[] root;
  final int[] family;
  final int[] intensity;
  final long[] primary;
  final int[] strained;
  final boolean[] floor;
  final boolean[] unilateral;
  final long[] uses;
  final long[] included;

  /**
   * Hard cost of a candidate wherever it stands, and its soft cost once a superset and once a
   * place.
   */
  final int[] ownHard;

  final int[] ownSoft;
  final int[] placeSoft;

  /** The targets that a candidate trains, as its pairs of target and half sets. */
  final int[][] trained;

  final int[] emphasis;
  final int[] minSets;
  final int emphasisSum;
  final boolean sameMuscleMatters;

  /** How many items the coach listed, and how many exercises were asked for. */
  final int items;

  final int wishes;
  private final int[] weight = new int[SessionConstraint.values().length];

  /** The tables of a problem, the same for all who ask. */
  static Tables of(SessionFacts facts) {
    return facts.workedOut(Tables.class, Tables::new);
  }

  private Tables(SessionFacts facts) {
    Problem problem = facts.problem();
    for (SessionConstraint constraint : SessionConstraint.values()) {
      weight[constraint.ordinal()] = constraint.weight(problem);
    }
    List<Candidate> all = facts.candidates();
    candidates = all.size();
    root = all.stream().mapToInt(Candidate::root).toArray();
    family = all.stream().mapToInt(Candidate::family).toArray();
    roots = all.stream().mapToInt(Candidate::root).max().orElse(-1) + 1;
    families = all.stream().mapToInt(Candidate::family).max().orElse(-1) + 1;
    intensity = all.stream().mapToInt(Candidate::intensity).toArray();
    primary = all.stream().mapToLong(Candidate::primary).toArray();
    strained = all.stream().mapToInt(Candidate::strained).toArray();
    uses = all.stream().mapToLong(Candidate::uses).toArray();
    included = all.stream().mapToLong(Candidate::included).toArray();
    floor = new boolean[candidates];
    unilateral = new boolean[candidates];
    trained = new int[candidates][];
    for (Candidate candidate : all) {
      floor[candidate.index()] = candidate.floor();
      unilateral[candidate.index()] = candidate.unilateral();
      trained[candidate.index()] = trained(candidate.halfSets());
    }
    ownHard = all.stream().mapToInt(this::ownHard).toArray();
    ownSoft = all.stream().mapToInt(this::ownSoft).toArray();
    placeSoft =
        all.stream().mapToInt(c -> c.loaded() ? 0 : weight(SessionConstraint.UNLOADED)).toArray();
    emphasis = problem.targets().stream().mapToInt(Target::emphasis).toArray();
    minSets = problem.targets().stream().mapToInt(Target::minSets).toArray();
    emphasisSum = problem.targets().stream().mapToInt(Target::emphasis).sum();
    items = problem.equipment().size();
    wishes = problem.include().size();
    sameMuscleMatters = problem.pairing() != Pairing.COMPOUND;
  }

  int weight(SessionConstraint constraint) {
    return weight[constraint.ordinal()];
  }

  /** Whether what stands in a place stands in an earlier one of its superset too. */
  static boolean stoodBefore(Candidate[] places, int first, int place) {
    for (int earlier = first; earlier < place; earlier++) {
      if (places[earlier] == places[place]) {
        return true;
      }
    }
    return false;
  }

  private int ownHard(Candidate candidate) {
    return candidate.missing() * weight(SessionConstraint.EQUIPMENT_MISSING)
        + candidate.unsafe() * weight(SessionConstraint.UNSAFE_FOR_CLIENT)
        + (candidate.aboveLevel() ? weight(SessionConstraint.ABOVE_LEVEL) : 0)
        + (candidate.excluded() ? weight(SessionConstraint.EXCLUDED) : 0);
  }

  private int ownSoft(Candidate candidate) {
    return candidate.stepsBelow() * weight(SessionConstraint.TOO_EASY)
        + candidate.recentPoints() * weight(SessionConstraint.USED_RECENTLY)
        - (candidate.liked() ? weight(SessionConstraint.LIKES) : 0)
        + (candidate.disliked() ? weight(SessionConstraint.DISLIKES) : 0);
  }

  private static int[] trained(int[] halfSets) {
    List<Integer> pairs = new ArrayList<>();
    for (int target = 0; target < halfSets.length; target++) {
      if (halfSets[target] > 0) {
        pairs.add(target);
        pairs.add(halfSets[target]);
      }
    }
    return pairs.stream().mapToInt(Integer::intValue).toArray();
  }
}
