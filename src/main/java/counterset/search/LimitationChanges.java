package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Limitation;
import counterset.model.Position;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * Limitations that may be dropped: first those that only rule out places on the floor, then, with a
 * word of care, other preferences and sore joints. A medical condition is a fact and never offered
 * as a change.
 */
final class LimitationChanges {

  private static final String CARE = ", if the client's body really allows it";

  private final List<Change> changes = new ArrayList<>();

  private LimitationChanges() {}

  static List<Change> of(Problem problem, Catalogue catalogue) {
    LimitationChanges all = new LimitationChanges();
    List<Limitation> own =
        problem.limitations().stream().map(catalogue.limitations()::get).toList();
    own.stream().filter(LimitationChanges::isAboutPlaces).forEach(l -> all.drop(l, ""));
    own.stream().filter(l -> !isAboutPlaces(l) && !isCondition(l)).forEach(l -> all.drop(l, CARE));
    return all.changes;
  }

  private void drop(Limitation limitation, String care) {
    String name = plain(limitation);
    String phrase = "drop the limitation " + name;
    if (name.startsWith("no ")) {
      String what = name.substring("no ".length());
      phrase = "allow " + (what.endsWith("ing") ? "" : "the ") + what;
    }
    changes.add(
        new Change(
            limitation.id(), phrase + care, draft -> draft.limitations.remove(limitation.id())));
  }

  private static String plain(Limitation limitation) {
    return Names.lower(limitation.name()).replace('-', ' ');
  }

  /** Whether it only rules out how the body is placed. */
  private static boolean isAboutPlaces(Limitation limitation) {
    return limitation.maxDemand().isEmpty()
        && limitation.avoidTraits().isEmpty()
        && limitation.avoidPositions().stream().anyMatch(Position::isFloor);
  }

  /** Whether it is neither a sore joint nor a preference; a condition may limit joints as well. */
  private static boolean isCondition(Limitation limitation) {
    String name = plain(limitation);
    return !name.startsWith("no ") && !name.startsWith("sore ");
  }
}
