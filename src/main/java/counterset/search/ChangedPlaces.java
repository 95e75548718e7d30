package counterset.search;

import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.Session;
import counterset.model.Superset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where two sessions differ, each place counted as one change, as {@link
 * counterset.search.FewChanges} counts them in a search.
 */
final class ChangedPlaces {

  private ChangedPlaces() {}

  /** The places of either that the other has something else at; in order. */
  static List<At> between(Plan from, Plan to) {
    Session before = from.session();
    Session after = to.session();
    int most = Math.max(before.supersets().size(), after.supersets().size());
    int perSuperset = to.problem().clock().perSuperset();
    List<At> changed = new ArrayList<>();
    for (int number = 1; number <= most; number++) {
      changed.addAll(between(superset(before, number), superset(after, number), perSuperset));
    }
    return Collections.unmodifiableList(changed);
  }

  /** Likewise of one superset. */
  static List<At> between(Superset before, Superset after, int perSuperset) {
    boolean bothSides =
        perSuperset == 2
            && !before.exercises().equals(after.exercises())
            && (after.isUnilateral() && !before.exercises().contains(after.exercises().get(0))
                || before.isUnilateral() && after.exercises().isEmpty());
    if (bothSides) {
      return List.of(new At(after.number(), 0));
    }
    return IntStream.range(0, perSuperset)
        .filter(position -> !isSame(before.exercises(), after.exercises(), position))
        .mapToObj(position -> new At(after.number(), position))
        .toList();
  }

  private static boolean isSame(List<Exercise> before, List<Exercise> after, int position) {
    String here = position < before.size() ? before.get(position).id() : "";
    return here.equals(position < after.size() ? after.get(position).id() : "");
  }

  private static Superset superset(Session session, int number) {
    return session.supersets().stream()
        .filter(superset -> superset.number() == number)
        .findFirst()
        .orElse(new Superset(number, List.of()));
  }
}
