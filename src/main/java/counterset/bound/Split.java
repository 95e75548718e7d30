package counterset.bound;

import java.util.Arrays;

/**
 * Tells the paths of a {@link Diagram} apart by something that they have done so far, as a class,
 * so that the diagram can forbid or charge for what depends on it.
 */
abstract class Split {

  final Diagram diagram;

  /** By state, whether the class makes no difference from there on. */
  private final boolean[] settled;

  Split(Diagram diagram) {
    this.diagram = diagram;
    this.settled = new boolean[diagram.states];
  }

  /** How many classes there are; a path starts in the first. */
  abstract int classes();

  /** The class of a path after an arc; -1 if it must not use the arc. */
  abstract int then(int before, int tag);

  /** The scaled points that an arc costs a path beside its own. */
  int cost(int before, int tag) {
    return 0;
  }

  /** The class in which a path may end, or is sure to be where classes make no difference. */
  abstract int last();

  /** Whether an arc makes a difference between the classes before it, in every case. */
  abstract boolean matters(int tag);

  /** Whether an arc puts a path into the last class whatever it was before. */
  boolean settles(int tag) {
    return false;
  }

  /** Whether a path can only end in the last class. */
  abstract boolean mustEndThere();

  /** The diagram told apart; null if it has more than so many arcs. */
  Diagram apart(int most) {
    settle();
    int states = diagram.states;
    ArcList arcs = new ArcList();
    int[][] number = new int[classes()][states];
    for (int[] each : number) {
      each[0] = -1;
    }
    number[settled[0] ? last() : 0][0] = arcs.state();
    boolean ends = false;
    for (int state = 1; state < states; state++) {
      ends = false;
      for (int then = 0; then < number.length; then++) {
        boolean wrong = state == states - 1 && then != last();
        int before = arcs.size;
        for (int i = diagram.first[state]; i < diagram.first[state + 1] && !wrong; i++) {
          into(state, i, then, number, arcs);
        }
        number[then][state] = arcs.size > before ? arcs.state() : -1;
        ends |= arcs.size > before;
      }
      if (arcs.size > most) {
        return null;
      }
    }
    return ends ? new Diagram(diagram.tags, arcs) : Diagram.empty(diagram.tags);
  }

  private void into(int state, int arc, int then, int[][] number, ArcList arcs) {
    int tag = diagram.tag[arc];
    for (int before = 0; before < number.length; before++) {
      int start = number[before][diagram.from[arc]];
      int after = start < 0 ? -1 : then(before, tag);
      if (after >= 0 && (settled[state] ? last() : after) == then) {
        arcs.add(start, diagram.points[arc] - cost(before, tag), tag);
      }
    }
  }

  private void settle() {
    Arrays.fill(settled, true);
    int end = diagram.states - 1;
    settled[end] = !mustEndThere();
    for (int state = end; state > 0; state--) {
      for (int i = diagram.first[state]; i < diagram.first[state + 1]; i++) {
        int tag = diagram.tag[i];
        settled[diagram.from[i]] &= settles(tag) || settled[state] && !matters(tag);
      }
    }
  }
}
