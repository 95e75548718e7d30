package counterset.search;

/**
 * What a session is worth.
 *
 * @param hard at most 0
 * @param medium at most 0
 */
record Worth(int hard, int medium, int soft) implements Comparable<Worth> {

  Worth plus(Worth other) {
    return new Worth(hard + other.hard, medium + other.medium, soft + other.soft);
  }

  /** A higher level is never traded for a lower one. */
  @Override
  public int compareTo(Worth other) {
    if (hard != other.hard) {
      return Integer.compare(hard, other.hard);
    }
    return medium != other.medium
        ? Integer.compare(medium, other.medium)
        : Integer.compare(soft, other.soft);
  }
}
