package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Equipment;
import counterset.model.Match;
import counterset.model.Owned;
import java.util.List;

/**
 * What the coach asks for is used often: each item in one place of nine, and what can be lifted in
 * 55 of 100; a unit is a place short of that. What only adds comfort is left out.
 */
public final class EquipShare extends CountConstraint {

  private static final int ONE_IN = 4;

  /** So many more items than there are would leave every second place to none of them. */
  private static final int ROOM = 2;

  private static final int LOADED_OF_100 = 55;

  EquipShare() {
    super(
        "equipShare",
        points(8),
        "The client's equipment is used often.",
        "per place short of one in four for each item (one in six for four of them, and so on), or of 55 in 100 for what can be lifted",
        "Equipment seldom used");
  }

  @Override
  public int tags(SessionFacts facts) {
    return facts.problem().equipment().size() + 1;
  }

  @Override
  public void ofExercise(SessionFacts facts, Candidate exercise, Tags tags) {
    int places = exercise.unilateral() ? 2 : 1;
    for (long uses = exercise.uses(); uses != 0; uses &= uses - 1) {
      tags.add(Long.numberOfTrailingZeros(uses), places);
    }
    if (exercise.loaded()) {
      tags.add(facts.problem().equipment().size(), places);
    }
  }

  @Override
  public int measure(SessionFacts facts, int item, int places) {
    List<Owned> owned = facts.problem().equipment();
    int due = 0;
    if (item == owned.size()) {
      due = owned.isEmpty() ? 0 : facts.places() * LOADED_OF_100 / 100;
    } else if (isTrained(facts, owned.get(item))) {
      due = facts.places() / Math.max(ONE_IN, trained(facts) + ROOM);
    }
    return Math.max(0, due - places);
  }

  private static int trained(SessionFacts facts) {
    return facts.workedOut(Trained.class, Trained::of).items();
  }

  /** How many items of the client's are to be used often. */
  private record Trained(int items) {

    static Trained of(SessionFacts facts) {
      return new Trained(
          (int)
              facts.problem().equipment().stream()
                  .filter(owned -> isTrained(facts, owned))
                  .count());
    }
  }

  private static boolean isTrained(SessionFacts facts, Owned owned) {
    Equipment equipment = facts.catalogue().equipment().get(owned.id());
    return equipment.comfortIn().isEmpty();
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "place") + " short";
  }

  @Override
  public String said(Told told) {
    return "the client's equipment is used seldom, by " + English.count(told.amount(), "place");
  }

  @Override
  public String total(Total total) {
    return "the client's equipment is used " + (total.better() ? "more" : "less") + " often";
  }
}
