package counterset.bound;

/** Leaves out the paths that do more than one of some candidates. */
final class AtMostOnce extends Split {

  private final boolean[] some;

  /**
   * A split.
   *
   * @param some by tag, whether one of the candidates is done
   */
  AtMostOnce(Diagram diagram, boolean[] some) {
    super(diagram);
    this.some = some;
  }

  @Override
  int classes() {
    return 2;
  }

  @Override
  int then(int before, int tag) {
    return some[tag] ? before == 0 ? 1 : -1 : before;
  }

  @Override
  int last() {
    return 0;
  }

  @Override
  boolean matters(int tag) {
    return some[tag];
  }

  @Override
  boolean mustEndThere() {
    return false;
  }
}
