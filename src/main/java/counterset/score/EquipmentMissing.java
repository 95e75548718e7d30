package counterset.score;

/** Only equipment that the client has is used; a unit is an exercise and missing item. */
public final class EquipmentMissing extends PlaceConstraint {

  EquipmentMissing() {
    super(
        "equipmentMissing",
        Level.HARD,
        1,
        "Only equipment that the client has is used.",
        "per exercise and missing item");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.missing();
  }
}
