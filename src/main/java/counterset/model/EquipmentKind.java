package counterset.model;

/**
 * How equipment is handled: held in the hands, worn on the body, placed on the floor, or always
 * there.
 */
public enum EquipmentKind implements Identified {
  HELD("held"),
  WORN("worn"),
  PLACED("placed"),
  FIXED("fixed");

  private final String id;

  EquipmentKind(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
