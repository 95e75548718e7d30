package counterset.model;

/**
 * How the body is placed during an exercise. A seat is a chair or a ball; whoever sits on the floor
 * or on a low step is floor-seated, and whoever lies on a bench is on the bench, not on the floor.
 */
public enum Position implements Identified {
  STANDING("standing", false),
  SEATED("seated", false),
  BENCH("bench", false),
  KNEELING("kneeling", true),
  QUADRUPED("quadruped", true),
  FLOOR_SEATED("floor-seated", true),
  SUPINE("supine", true),
  PRONE("prone", true),
  SIDE_LYING("side-lying", true),
  WALL("wall", false);

  private final String id;
  private final boolean floor;

  Position(String id, boolean floor) {
    this.id = id;
    this.floor = floor;
  }

  @Override
  public String id() {
    return id;
  }

  /** Whether one has to get down to the floor for it. */
  public boolean isFloor() {
    return floor;
  }
}
