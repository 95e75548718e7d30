package counterset.search;

import counterset.model.Session;

/**
 * What was made of a given session.
 *
 * @param changes how many changes lead to it
 */
record Reworked(int changes, Session session, Worth worth) {

  /** Whether it is better than another, or as good with fewer changes. */
  boolean beats(Reworked other) {
    int order = worth.compareTo(other.worth);
    return order > 0 || order == 0 && changes < other.changes;
  }
}
