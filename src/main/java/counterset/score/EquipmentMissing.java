package counterset.score;

import static counterset.score.Weight.rule;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/** Only equipment that the client has is used; a unit is an exercise and missing item. */
public final class EquipmentMissing extends PlaceConstraint {

  EquipmentMissing() {
    super(
        "equipmentMissing",
        rule("Maybe swap it, or list the equipment."),
        "Only equipment that the client has is used.",
        "per exercise and missing item",
        "Equipment that the client does not have");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.missing();
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "item");
  }

  @Override
  String does(Told told) {
    return "needs " + told.missing();
  }

  @Override
  public String said(Told told) {
    return came(told) + ", not among the equipment";
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " exercises need what the client does not have";
  }
}
