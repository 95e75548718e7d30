package counterset.search;

import counterset.score.Candidate;
import counterset.score.SessionFacts;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What may stand in for each candidate on each track, the least awkward first; of equal ones first
 * what is lifted like it, is about as heavy and moves alike. Worked out when first asked for; an
 * instance serves one thread.
 */
public final class Ranking {

  private final SessionFacts facts;
  private final Ranked[][] ranked;

  public Ranking(SessionFacts facts) {
    this.facts = facts;
    this.ranked = new Ranked[facts.tracks()][facts.candidates().size()];
  }

  /** The modifications for an exercise that does not suit a track. */
  public Ranked of(Candidate main, int track) {
    Ranked list = ranked[track][main.index()];
    if (list == null) {
      list = rank(main, track);
      ranked[track][main.index()] = list;
    }
    return list;
  }

  private Ranked rank(Candidate main, int track) {
    Comparator<Candidate> order =
        Comparator.comparingInt((Candidate c) -> c.awkwardnessFor(main))
            .thenComparing(c -> main.loaded() && !c.loaded())
            .thenComparingInt(c -> Math.abs(c.intensity() - main.intensity()))
            .thenComparing(c -> !c.exercise().pattern().equals(main.exercise().pattern()))
            .thenComparingInt(Candidate::index);
    List<Candidate> all =
        facts.candidates().stream()
            .filter(candidate -> candidate.standsInFor(main, track))
            .sorted(order)
            .toList();
    List<Candidate> alike = all.stream().filter(c -> c.unilateral() == main.unilateral()).toList();
    if (alike.stream().noneMatch(c -> (c.primary() & main.primary()) != 0)) {
      return new Ranked(all.toArray(Candidate[]::new), all.size());
    }
    List<Candidate> alikeFirst = new ArrayList<>(alike);
    all.stream().filter(c -> !alike.contains(c)).forEach(alikeFirst::add);
    return new Ranked(alikeFirst.toArray(Candidate[]::new), alike.size());
  }

  /**
   * Modifications in order.
   *
   * @param preferred how many of them come first because one-sided is replaced by one-sided where
   *     that can be; the rest is for when these are used up
   */
  public record Ranked(Candidate[] candidates, int preferred) {}
}
