package counterset.bound;

/** Leaves out the paths that do none of some candidates. */
final class AtLeastOnce extends Split {

  private final boolean[] some;

  /**
   * A split.
   *
   * @param some by tag, whether one of the candidates is done
   */
  AtLeastOnce(Diagram diagram, boolean[] some) {
    super(diagram);
    this.some = some;
  }

  @Override
  int classes() {
    return 2;
  }

  @Override
  int then(int before, int tag) {
    return some[tag] ? 1 : before;
  }

  @Override
  int last() {
    return 1;
  }

  @Override
  boolean matters(int tag) {
    return false;
  }

  @Override
  boolean settles(int tag) {
    return some[tag];
  }

  @Override
  boolean mustEndThere() {
    return true;
  }
}
