package counterset.cli;

/** The exit status of a command. */
final class Exit {

  static final int DONE = 0;
  static final int INTERNAL = 1;
  static final int BAD_INPUT = 2;
  static final int INFEASIBLE = 3;

  private Exit() {}
}
