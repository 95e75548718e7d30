package counterset.score;

/** All equipment that the coach listed is put to use; a unit is an item. */
public final class EquipmentUnused extends CountConstraint {

  EquipmentUnused() {
    super(
        "equipmentUnused",
        Level.MEDIUM,
        1,
        "All equipment that the coach listed is put to use.",
        "per unused item");
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
}
