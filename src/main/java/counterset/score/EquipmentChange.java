package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/** Little is taken up or put away; a unit is an item, or one exchanged for another. */
public final class EquipmentChange extends StepConstraint {

  EquipmentChange() {
    super(
        "equipmentChange",
        points(2),
        "Little is taken up or put away between exercises.",
        "per item, or one exchanged for another; what stands ready, such as a chair, is free",
        "Equipment changes");
  }

  @Override
  public int measure(Step step) {
    return step.items();
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "item") + " taken up or put away";
  }

  @Override
  public String said(Told told) {
    return English.count(told.amount(), "item") + " to take up or put away";
  }

  @Override
  public String total(Total total) {
    String items = total.amount() == 1 ? " item" : " items";
    return total.amount() + " " + total.fewer() + items + " to take up or put away";
  }
}
