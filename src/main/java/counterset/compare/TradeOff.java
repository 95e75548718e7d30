package counterset.compare;

import java.util.Comparator;
import java.util.List;

/**
 * Two aims, of which one is often had at the price of the other, and where each plan that can be
 * led stands.
 *
 * @param across the aim of which less is better
 * @param up the aim of which more is better
 * @param points one for each plan, in their order
 */
public record TradeOff(Aim across, Aim up, List<Point> points) {

  /** What is traded. */
  public enum Aim {
    MINUTES("minutes", "Minutes"),
    POINTS("points", "Points"),
    HANDLED("handled", "Equipment changes"),
    LOADED("loaded", "Work with equipment");

    private final String id;
    private final String title;

    Aim(String id, String title) {
      this.id = id;
      this.title = title;
    }

    /** Its id in files. */
    public String id() {
      return id;
    }

    /** Its name above a column. */
    public String title() {
      return title;
    }

    /** How much of it a plan has: minutes, points, items, or the loaded share in per cent. */
    public double of(Facts facts) {
      return switch (this) {
        case MINUTES -> facts.minutes();
        case POINTS -> facts.points();
        case HANDLED -> facts.handled();
        case LOADED -> 100 * facts.loadedShare();
      };
    }
  }

  /**
   * Where a plan stands.
   *
   * @param beatenBy the numbers of those that are at least as good in both aims and better in one;
   *     empty on the front
   */
  public record Point(Compared plan, double across, double up, List<Integer> beatenBy) {

    public Point {
      beatenBy = List.copyOf(beatenBy);
    }

    /** Whether nothing beats it. */
    public boolean onFront() {
      return beatenBy.isEmpty();
    }
  }

  public TradeOff {
    points = List.copyOf(points);
  }

  /** Points against minutes, and equipment changes against loaded work. */
  public static List<TradeOff> of(Comparison comparison) {
    return List.of(
        of(comparison, Aim.MINUTES, Aim.POINTS), of(comparison, Aim.HANDLED, Aim.LOADED));
  }

  private static TradeOff of(Comparison comparison, Aim across, Aim up) {
    List<Compared> plans = comparison.feasible();
    Front<Compared> front = new Front<>(List.of(less(across), more(up)));
    return new TradeOff(
        across,
        up,
        plans.stream()
            .map(
                it ->
                    new Point(
                        it,
                        across.of(it.facts()),
                        up.of(it.facts()),
                        front.beating(it, plans).stream().map(Compared::number).toList()))
            .toList());
  }

  private static Comparator<Compared> less(Aim aim) {
    return Comparator.comparingDouble(it -> aim.of(it.facts()));
  }

  /** Where points count, a wish that is met goes before them. */
  private static Comparator<Compared> more(Aim aim) {
    Comparator<Compared> more = less(aim).reversed();
    return aim == Aim.POINTS
        ? Comparator.comparing((Compared it) -> -it.facts().medium()).thenComparing(more)
        : more;
  }
}
