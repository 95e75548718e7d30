package counterset.search;

import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Session;
import counterset.model.Superset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** A place of a session that is to be filled anew, and which other place comes free with it. */
final class Vacancy {

  private final Session session;
  private final Superset superset;
  private final int perSuperset;
  private final At at;

  /**
   * A vacancy.
   *
   * @throws IllegalArgumentException if the session has no such place
   */
  Vacancy(Session session, int perSuperset, At at) {
    this.session = session;
    this.perSuperset = perSuperset;
    this.at = at;
    List<Superset> supersets = session.supersets();
    if (at.superset() > supersets.size()) {
      throw new IllegalArgumentException("The session has no place " + at + ".");
    }
    this.superset = supersets.get(at.superset() - 1);
    if (at.position() >= perSuperset || at.position() > superset.exercises().size()) {
      throw new IllegalArgumentException("The session has no place " + at + ".");
    }
  }

  Session session() {
    return session;
  }

  At at() {
    return at;
  }

  /** Whether it is what stands there now. */
  boolean isLeaving(Exercise exercise) {
    return standing().filter(exercise::equals).isPresent();
  }

  private Optional<Exercise> standing() {
    return superset.exercises().stream().skip(at.position()).findFirst();
  }

  /** Whether an exercise would take both places of the superset. */
  boolean fillsBoth(Exercise exercise) {
    return exercise.isUnilateral() && perSuperset == 2;
  }

  /**
   * The places that come free, in order.
   *
   * @param both whether for an exercise that takes both places of the superset
   */
  Set<At> places(boolean both) {
    Set<At> places = new TreeSet<>(Set.of(at));
    if (both || perSuperset == 2 && superset.isUnilateral()) {
      places.add(new At(at.superset(), 1 - at.position()));
    }
    return places;
  }
}
