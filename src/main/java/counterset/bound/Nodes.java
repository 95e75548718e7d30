package counterset.bound;

import counterset.score.Candidate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The nodes that a session can come to: what stands in a place, and which worn items stay on. */
final class Nodes {

  /** So many nodes for each candidate, at most; beyond that, what is worn is left open. */
  private static final int WORN_STATES = 4;

  private Nodes() {}

  /**
   * The nodes of some candidates, the start first.
   *
   * @param exact whether they tell exactly what is in use
   */
  record Graph(List<Node> nodes, boolean exact) {

    /** Whether one node can follow another, as far as the items in use go. */
    boolean follows(Node from, Node to) {
      return !exact || from.then(to.candidate()).equals(to);
    }
  }

  static Graph of(List<Candidate> candidates) {
    Set<Node> seen = new LinkedHashSet<>();
    Deque<Node> open = new ArrayDeque<>();
    seen.add(Node.START);
    open.add(Node.START);
    while (!open.isEmpty() && seen.size() <= WORN_STATES * candidates.size() + 1) {
      Node node = open.remove();
      for (Candidate next : candidates) {
        Node then = node.then(next);
        if (seen.add(then)) {
          open.add(then);
        }
      }
    }
    if (open.isEmpty()) {
      return new Graph(List.copyOf(seen), true);
    }
    List<Node> loose = new ArrayList<>();
    loose.add(Node.START);
    for (Candidate candidate : candidates) {
      loose.add(new Node(candidate, candidate.handling().needs(), candidate.handling().keeps()));
    }
    return new Graph(List.copyOf(loose), false);
  }
}
