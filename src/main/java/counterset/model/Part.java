package counterset.model;

/** The part of a session that an exercise is made for. */
public enum Part implements Identified {
  MAIN("main"),
  WARM_UP("warm-up"),
  COOL_DOWN("cool-down");

  private final String id;

  Part(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
