package counterset.model;

/** The part of the body that a muscle group belongs to. */
public enum Region implements Identified {
  UPPER("upper"),
  LOWER("lower"),
  CORE("core");

  private final String id;

  Region(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
