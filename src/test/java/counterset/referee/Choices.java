package counterset.referee;

import counterset.model.Catalogue;
import counterset.model.EquipmentKind;
import counterset.model.Exercise;
import counterset.model.Joint;
import counterset.model.Need;
import counterset.model.Opposites;
import counterset.model.Pairing;
import counterset.score.Candidate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The exercises that may stand in a place, and the items that they need. An item is a need as it is
 * written: another count or load is another item. Fixed equipment is none.
 */
final class Choices {

  private final Request request;
  private final Catalogue catalogue;
  private final List<Need> items;
  private final List<Choice> all = new ArrayList<>();

  Choices(Request request, List<Exercise> exercises) {
    this.request = request;
    this.catalogue = request.catalogue();
    Set<Need> needs = new LinkedHashSet<>();
    for (Exercise exercise : exercises) {
      for (Need need : exercise.needs()) {
        if (catalogue.equipment().get(need.equipment()).kind() != EquipmentKind.FIXED) {
          needs.add(need);
        }
      }
    }
    if (needs.size() >= Long.SIZE) {
      throw new IllegalArgumentException("Too many different items (" + needs.size() + ").");
    }
    items = List.copyOf(needs);
    Opposites opposites = new Opposites(catalogue);
    exercises.forEach(exercise -> all.add(choice(exercise, opposites)));
  }

  private Choice choice(Exercise exercise, Opposites opposites) {
    long needs = 0;
    long keeps = 0;
    for (int item = 0; item < items.size(); item++) {
      Need need = items.get(item);
      if (exercise.needs().contains(need)) {
        needs |= 1L << item;
      }
      if (isWorn(need) && exercise.allowsWorn().contains(need.equipment())) {
        keeps |= 1L << item;
      }
    }
    Opposites.Profile profile = opposites.profile(exercise);
    long joints = 0;
    for (Joint joint : Joint.values()) {
      joints |= exercise.demand().getOrDefault(joint, 0) >= 2 ? 1L << joint.ordinal() : 0;
    }
    Candidate candidate = request.candidate(exercise.id()).orElseThrow();
    String pattern = request.pattern(candidate);
    boolean compound = request.problem().pairing() == Pairing.COMPOUND;
    Neighbour neighbour =
        new Neighbour(compound ? 0 : profile.primary(), request.isNarrow() ? 0 : joints, pattern);
    return new Choice(
        all.size(),
        exercise,
        needs,
        keeps | needs,
        profile.primary(),
        profile,
        neighbour,
        candidate.merit(),
        pattern);
  }

  private boolean isWorn(Need need) {
    return catalogue.equipment().get(need.equipment()).kind() == EquipmentKind.WORN;
  }

  List<Choice> all() {
    return all;
  }

  /** How many items are carried away or fetched, whichever is more. What is placed stands ready. */
  int carried(long away, long fetched) {
    return Math.max(carried(away), carried(fetched));
  }

  private int carried(long set) {
    int count = 0;
    for (int item = 0; item < items.size(); item++) {
      EquipmentKind kind = catalogue.equipment().get(items.get(item).equipment()).kind();
      count += (set >> item & 1) != 0 && kind != EquipmentKind.PLACED ? 1 : 0;
    }
    return count;
  }

  /** Seconds to take up all these items. */
  int putOnSeconds(long set) {
    return seconds(set, true);
  }

  /** Seconds to put away all these items. */
  int takeOffSeconds(long set) {
    return seconds(set, false);
  }

  private int seconds(long set, boolean on) {
    int seconds = 0;
    for (int item = 0; item < items.size(); item++) {
      if ((set >> item & 1) != 0) {
        var equipment = catalogue.equipment().get(items.get(item).equipment());
        seconds += on ? equipment.putOnSeconds() : equipment.takeOffSeconds();
      }
    }
    return seconds;
  }
}
