package counterset.model;

/** Which side works during an interval. */
public enum Side implements Identified {
  BOTH("both"),
  LEFT("left"),
  RIGHT("right"),
  ALTERNATING("alternating");

  private final String id;

  Side(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
