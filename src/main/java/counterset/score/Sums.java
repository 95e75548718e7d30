package counterset.score;

/** Adds up matches, level by level. */
final class Sums implements Sink {

  private int hard;
  private int medium;
  private int soft;

  @Override
  public void match(Rule rule, int amount, int first, int second, String subject, int track) {
    add(rule.level(), rule.perUnit() * amount);
  }

  void add(Level level, int points) {
    switch (level) {
      case HARD -> hard += points;
      case MEDIUM -> medium += points;
      case SOFT -> soft += points;
    }
  }

  /** Adds points by level. */
  void add(int[] levels, int times) {
    hard += times * levels[0];
    medium += times * levels[1];
    soft += times * levels[2];
  }

  void add(int[] levels) {
    add(levels, 1);
  }

  void add(Sums other, int times) {
    hard += times * other.hard;
    medium += times * other.medium;
    soft += times * other.soft;
  }

  void set(Sums other) {
    hard = other.hard;
    medium = other.medium;
    soft = other.soft;
  }

  void clear() {
    hard = 0;
    medium = 0;
    soft = 0;
  }

  int hard() {
    return hard;
  }

  int medium() {
    return medium;
  }

  int soft() {
    return soft;
  }
}
