package counterset.search;

import counterset.score.Candidate;

/**
 * A session near a given one.
 *
 * @param changes that lead to it from the given one
 * @param places the candidates by place, null where there is none
 * @param standIns by track and place, null where there is none
 * @param hard points, its followers included, at most 0
 * @param medium likewise, at most 0
 * @param soft likewise
 */
public record Near(
    int changes, Candidate[] places, Candidate[] standIns, int hard, int medium, int soft) {

  /** Its score as one number, in the order of scores. */
  long energy() {
    return energy(hard, medium, soft);
  }

  static long energy(int hard, int medium, int soft) {
    return ((long) hard << 40) + ((long) medium << 20) + soft;
  }
}
