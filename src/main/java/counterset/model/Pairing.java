package counterset.model;

/** Which exercises a superset should bring together. */
public enum Pairing implements Identified {
  OPPOSING("opposing"),
  COMPOUND("compound"),
  FREE("free");

  private final String id;

  Pairing(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
