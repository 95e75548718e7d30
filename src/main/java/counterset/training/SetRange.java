package counterset.training;

/**
 * Published ranges of weekly sets for one muscle group.
 *
 * <p>At least 4: Iversen VM et al., Sports Med 2021;51:2079-2095. Below 5, 5 to 9, 10 and more:
 * Schoenfeld BJ et al., J Sports Sci 2017;35(11):1073-1082, whose categories are whole sets; half
 * sets between 9 and 10 count as 5 to 9.
 */
public enum SetRange {
  NONE("none", 0),
  BELOW_LEAST("below 4", 0.5),
  LEAST("4 to below 5", 4),
  MIDDLE("5 to 9", 5),
  HIGH("10 or more", 10);

  private final String words;
  private final double from;

  SetRange(String words, double from) {
    this.words = words;
    this.from = from;
  }

  /** The range in words. */
  public String words() {
    return words;
  }

  /** The range that a number of sets lies in. */
  public static SetRange of(double sets) {
    SetRange range = NONE;
    for (SetRange next : values()) {
      if (sets >= next.from) {
        range = next;
      }
    }
    return range;
  }
}
