package counterset.score;

import counterset.model.Identified;

/** How much a constraint matters; a higher level is never traded for a lower one. */
public enum Level implements Identified {
  HARD("hard"),
  MEDIUM("medium"),
  SOFT("soft");

  private final String id;

  Level(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
