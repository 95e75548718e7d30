package counterset.bench;

import counterset.model.PlanScore;
import counterset.search.TimedSearch;
import java.util.Comparator;

/** The points of a session that breaks no rule; medium ones count first. */
record Points(int medium, int soft) implements Comparable<Points> {

  private static final Comparator<Points> ORDER =
      Comparator.comparingInt(Points::medium).thenComparingInt(Points::soft);

  static Points of(PlanScore score) {
    return new Points(score.medium(), score.soft());
  }

  static Points of(TimedSearch.Found found) {
    return new Points(found.medium(), found.soft());
  }

  Points orBetter(Points other) {
    return compareTo(other) >= 0 ? this : other;
  }

  @Override
  public int compareTo(Points other) {
    return ORDER.compare(this, other);
  }

  /** Soft points alone where no wish is unmet. */
  @Override
  public String toString() {
    return medium == 0 ? String.valueOf(soft) : medium + " / " + soft;
  }
}
