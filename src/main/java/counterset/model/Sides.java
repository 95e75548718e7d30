package counterset.model;

/** Both sides at once; one side for a whole interval; or sides in turn within an interval. */
public enum Sides implements Identified {
  BILATERAL("bilateral"),
  UNILATERAL("unilateral"),
  ALTERNATING("alternating");

  private final String id;

  Sides(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
