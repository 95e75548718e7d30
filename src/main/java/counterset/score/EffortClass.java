package counterset.score;

import counterset.model.Identified;

/** How hard an exercise is for a client in the interval of work. */
public enum EffortClass implements Identified {
  EASY("easy"),
  WORKING("working"),
  HARD("hard");

  private final String id;

  EffortClass(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
