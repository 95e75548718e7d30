package counterset.training;

import counterset.model.Identified;

/** What the load advice comes to. */
public enum Step implements Identified {
  UP("up"),
  HOLD("hold"),
  NO_ADVICE("no-advice");

  private final String id;

  Step(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
