package counterset.model;

/** A joint whose strain is rated by joint demand, 0 (none) to 3 (high). */
public enum Joint implements Identified {
  KNEE("knee"),
  HIP("hip"),
  LOWER_BACK("lower-back"),
  SHOULDER("shoulder"),
  ELBOW("elbow"),
  WRIST("wrist"),
  ANKLE("ankle"),
  NECK("neck");

  private final String id;

  Joint(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
