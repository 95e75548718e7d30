package counterset.model;

/** How heavy a held item is, for this client. */
public enum Load implements Identified {
  LIGHT("light"),
  MEDIUM("medium"),
  HEAVY("heavy");

  private final String id;

  Load(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
