package counterset.model;

/** What an interval of the clock is for. */
public enum IntervalKind implements Identified {
  GET_READY("get-ready"),
  WARM_UP("warm-up"),
  WORK("work"),
  SWITCH("switch"),
  REST("rest"),
  COOL_DOWN("cool-down");

  private final String id;

  IntervalKind(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
