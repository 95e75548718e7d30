package counterset.score;

/** Little is taken up or put away; a unit is an item. */
public final class EquipmentChange extends StepConstraint {

  EquipmentChange() {
    super(
        "equipmentChange",
        Level.SOFT,
        5,
        "Little is taken up or put away between exercises.",
        "per item");
  }

  @Override
  public int measure(Step step) {
    return step.items();
  }
}
