package counterset.score;

import static counterset.score.Weight.wish;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/** All equipment that the coach listed is put to use; a unit is an item. */
public final class EquipmentUnused extends CountConstraint implements MatchByMatch {

  EquipmentUnused() {
    super(
        "equipmentUnused",
        wish("Maybe leave it out, or add a target that it trains."),
        "All equipment that the coach listed is put to use.",
        "per unused item",
        "Equipment listed but not used");
  }

  @Override
  public int tags(SessionFacts facts) {
    return facts.problem().equipment().size();
  }

  @Override
  public void ofExercise(SessionFacts facts, Candidate exercise, Tags tags) {
    for (long uses = exercise.uses(); uses != 0; uses &= uses - 1) {
      tags.add(Long.numberOfTrailingZeros(uses), 1);
    }
  }

  @Override
  public int measure(SessionFacts facts, int item, int exercises) {
    return exercises == 0 ? 1 : 0;
  }

  @Override
  public String subject(SessionFacts facts, int item) {
    return facts.problem().equipment().get(item).id();
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "item");
  }

  @Override
  public String said(Told told) {
    return told.subject() + ": listed, and no exercise uses it";
  }

  @Override
  public String came(Told told) {
    return "no exercise uses " + told.item() + " any more";
  }

  @Override
  public String went(Told told) {
    return "an exercise now uses " + told.item();
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " items lie unused";
  }
}
