package counterset.bound;

/** Tells the paths of a {@link Diagram} apart, as long as that leaves it small enough. */
final class Refinement {

  /** Arcs of a diagram that every step of a descent can afford. */
  private static final int MOST = 500_000;

  /** Arcs of a diagram before those that no good session uses are left out. */
  private static final int AT_ONCE = 2_500_000;

  /** Arcs of a diagram that is told apart by intensity. */
  private static final int FEW = 60_000;

  private static final int TIMES = 2;
  private static final int INTENSITIES = 2;

  /** Exercises of an intensity that are told apart; paths have been charged for the first. */
  private static final int LIGHT = 3;

  private final Memory memory;
  private final int[] intensity;
  private final int[] charged;
  private final int order;

  /** How many intensities are charged for in full. */
  private int ordered;

  /**
   * Refines nothing yet.
   *
   * @param intensity by candidate
   * @param charged by candidate, as far as it counts as heavier than what came before
   * @param order scaled points of a step by which a later exercise is heavier; 0 to leave it out
   */
  Refinement(Memory memory, int[] intensity, int[] charged, int order) {
    this.memory = memory;
    this.intensity = intensity;
    this.charged = charged;
    this.order = order;
  }

  /** The diagram that {@link Paths} and their prices leave, or null if it is too large. */
  static Diagram first(Network network, Paths paths, Prices prices, long least) {
    return new Sieve(network, paths, prices, least, MOST).diagram();
  }

  /**
   * Leaves out what no path of so many scaled points uses, and makes paths keep to more.
   *
   * @param least scaled points of a path that matters
   */
  Diagram of(Diagram before, Prices prices, long least) {
    Diagram diagram = before.without(prices, least);
    for (int i = 0; i < INTENSITIES + TIMES; i++) {
      Grown grown = i < INTENSITIES ? order(diagram) : memory.grow(diagram, AT_ONCE);
      if (grown != null) {
        Diagram small = grown.diagram().without(prices, least);
        if (small.arcs() > Math.max(MOST, diagram.arcs())) {
          return diagram;
        }
        diagram = small;
        grown.accept().run();
      }
    }
    return diagram;
  }

  /** Charges for all exercises of one more intensity that come before a heavier one. */
  private Grown order(Diagram diagram) {
    if (ordered == INTENSITIES || order == 0 || diagram.arcs() > FEW) {
      return null;
    }
    int[] level = byTag(diagram, intensity);
    int[] later = byTag(diagram, charged);
    Diagram grown =
        new LightBefore(diagram, level, later, ordered + 1, LIGHT, order).apart(AT_ONCE);
    return grown == null ? null : new Grown(grown, () -> ordered++);
  }

  private static int[] byTag(Diagram diagram, int[] byCandidate) {
    int[] level = new int[diagram.tags.size()];
    for (int tag = 0; tag < level.length; tag++) {
      int done = diagram.tags.done(tag);
      level[tag] = done < 0 ? 0 : byCandidate[done];
    }
    return level;
  }
}
