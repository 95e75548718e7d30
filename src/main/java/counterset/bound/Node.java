package counterset.bound;

import counterset.score.Candidate;
import counterset.timeline.Kit;

/**
 * A candidate that stands in a place, with what is in use then.
 *
 * @param candidate null for the start of the session
 * @param least items that are certainly in use, as bits of the kit
 * @param most items that may be in use; equal to {@code least} where it is known exactly
 */
record Node(Candidate candidate, long least, long most) {

  static final Node START = new Node(null, 0, 0);

  /** What is in use when another candidate follows. */
  Node then(Candidate next) {
    return new Node(
        next, Kit.inUseAfter(least, next.handling()), Kit.inUseAfter(most, next.handling()));
  }

  /** The items in use that make the change to another candidate as small as it can be. */
  long kindest(Candidate next) {
    return least & ~next.handling().keeps() | next.handling().needs() & most;
  }
}
