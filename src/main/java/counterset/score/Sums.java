package counterset.score;

/** Adds up matches, level by level. */
final class Sums implements Sink {

  private static final int LEVELS = Level.values().length;

  private final int[] points = new int[LEVELS];

  @Override
  public void match(Rule rule, int amount, int first, int second, String subject, int track) {
    add(rule, amount);
  }

  /** Adds so many units of a constraint. */
  void add(Rule rule, int amount) {
    points[rule.level().ordinal()] += rule.perUnit() * amount;
  }

  void add(Level level, int more) {
    points[level.ordinal()] += more;
  }

  /** Adds points by level, so many times. */
  void add(int[] levels, int times) {
    for (int level = 0; level < LEVELS; level++) {
      points[level] += times * levels[level];
    }
  }

  void add(Sums other, int times) {
    add(other.points, times);
  }

  void set(Sums other) {
    clear();
    add(other, 1);
  }

  void clear() {
    for (int level = 0; level < LEVELS; level++) {
      points[level] = 0;
    }
  }

  int hard() {
    return points[0];
  }

  int medium() {
    return points[1];
  }

  int soft() {
    return points[2];
  }
}
