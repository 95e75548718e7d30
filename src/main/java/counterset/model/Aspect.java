package counterset.model;

/** The side of its segment that a muscle group lies on. */
public enum Aspect implements Identified {
  FRONT("front"),
  BACK("back"),
  INNER("inner"),
  OUTER("outer");

  private final String id;

  Aspect(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
