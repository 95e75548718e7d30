package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.Match;
import counterset.model.MovementPattern;
import java.util.BitSet;
import java.util.List;
import java.util.function.Predicate;

/**
 * The first superset is a pair of big lifts of two wanted movement patterns that open a session, as
 * hard as there are, of two groups such as knee and hip or push and pull; a unit is one of the two
 * that is missing although it can be done. Common practice, no source.
 */
public final class OpenSmall extends SessionConstraint {

  private static final int PAIR = 2;

  OpenSmall() {
    super(
        "openSmall",
        points(10),
        "The first superset is a pair of big lifts.",
        "per big lift of another group of patterns that it lacks although it can be done",
        "No pair of big lifts first");
  }

  @Override
  boolean matters(SessionFacts facts) {
    return openings(facts).groups().cardinality() > 0;
  }

  private static Openings openings(SessionFacts facts) {
    return facts.workedOut(Openings.class, Openings::of);
  }

  /**
   * What opens a session.
   *
   * @param exercises by number
   * @param groups those of their patterns, by number
   */
  private record Openings(BitSet exercises, BitSet groups) {

    /**
     * The big lifts, or the best there is; any work where no pattern that is wanted opens sessions,
     * as for the arms. With what the client has to lift if that is possible, and off the floor.
     */
    static Openings of(SessionFacts facts) {
      boolean pairs = facts.perSuperset() > 1 && facts.supersets() > 1;
      List<Candidate> fair =
          facts.candidates().stream()
              .filter(it -> pairs && it.usable() && it.merit().fillsPattern() && fits(facts, it))
              .toList();
      boolean big = fair.stream().anyMatch(it -> isOpener(facts, it));
      List<Candidate> able =
          fair.stream().filter(it -> big ? isOpener(facts, it) : !isTrunk(facts, it)).toList();
      able = preferred(able, Candidate::loaded);
      able = preferred(able, it -> !it.floor());
      int best = able.stream().mapToInt(it -> it.merit().tier()).max().orElse(0);
      int tier = Math.min(best, big ? Merit.BIG_LIFT : Merit.SMALL);
      BitSet exercises = new BitSet();
      BitSet groups = new BitSet();
      able.stream()
          .filter(it -> it.merit().tier() >= tier)
          .forEach(
              it -> {
                exercises.set(it.index());
                groups.set(group(facts, it));
              });
      return new Openings(exercises, groups);
    }

    private static List<Candidate> preferred(List<Candidate> all, Predicate<Candidate> which) {
      List<Candidate> preferred = all.stream().filter(which).toList();
      return preferred.isEmpty() ? all : preferred;
    }

    /** What the catalogue says nothing of is a group of its own. */
    static int group(SessionFacts facts, Candidate exercise) {
      int pattern = exercise.merit().pattern();
      int groups = MovementPattern.Group.values().length;
      return facts
          .patterns()
          .kind(pattern)
          .map(it -> it.group().ordinal())
          .orElse(groups + pattern);
    }

    /** The trunk is not worked hardest first. */
    private static boolean isTrunk(SessionFacts facts, Candidate exercise) {
      return facts
          .patterns()
          .kind(exercise.merit().pattern())
          .filter(it -> it.group() == MovementPattern.Group.TRUNK)
          .isPresent();
    }

    private static boolean isOpener(SessionFacts facts, Candidate exercise) {
      return facts
          .patterns()
          .kind(exercise.merit().pattern())
          .filter(MovementPattern::opens)
          .isPresent();
    }

    private static boolean fits(SessionFacts facts, Candidate exercise) {
      return !exercise.unilateral() && facts.share(exercise.merit().pattern()) > 0;
    }

    boolean has(Candidate exercise) {
      return exercises.get(exercise.index());
    }
  }

  @Override
  void measure(SessionFacts facts, Candidate[] places, Matches matches) {
    Openings openings = openings(facts);
    BitSet found = new BitSet();
    for (int place = 0; place < facts.perSuperset(); place++) {
      if (places[place] == null) {
        return;
      }
      if (openings.has(places[place])) {
        found.set(Openings.group(facts, places[place]));
      }
    }
    int missing = Math.min(PAIR, openings.groups().cardinality()) - found.cardinality();
    if (missing > 0) {
      matches.match(missing, 0, null);
    }
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return String.valueOf(amount);
  }

  @Override
  public String said(Told told) {
    return "the session does not open with a pair of big lifts";
  }

  @Override
  public String total(Total total) {
    return "the session "
        + (total.better() ? "opens" : "no longer opens")
        + " with a pair of big lifts";
  }
}
