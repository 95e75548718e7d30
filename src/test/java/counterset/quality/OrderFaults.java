package counterset.quality;

import counterset.model.MovementPattern;
import counterset.quality.Spoiled.Kind;
import counterset.score.Candidate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Faults that leave every exercise in: only what stands beside what, or after it, changes. */
final class OrderFaults {

  private final Mapped mapped;
  private final Judged session;
  private final List<List<Candidate>> supersets = new ArrayList<>();

  OrderFaults(Mapped mapped, Judged session) {
    this.mapped = mapped;
    this.session = session;
    int size = session.facts().perSuperset();
    for (int first = 0; first < session.places().size(); first += size) {
      supersets.add(session.places().subList(first, first + size));
    }
  }

  Stream<Spoiled> all() {
    List<Spoiled> faults = new ArrayList<>();
    faults.add(reversed());
    floorFirst(faults);
    for (int one = 0; one < supersets.size(); one++) {
      for (int other = one + 1; other < supersets.size(); other++) {
        if (isPair(one) && isPair(other) && tellsPairsApart(one, other)) {
          faults.add(swapped(one, other));
        }
      }
    }
    return faults.stream();
  }

  private Spoiled reversed() {
    List<List<Candidate>> order = new ArrayList<>(supersets);
    Collections.reverse(order);
    return spoiled(Kind.REVERSED, "last superset first", order);
  }

  /** The first superset on the floor, of a session that opens standing. */
  private void floorFirst(List<Spoiled> faults) {
    for (int number = 1; number < supersets.size() && !isOnFloor(0); number++) {
      if (isOnFloor(number)) {
        List<List<Candidate>> order = new ArrayList<>(supersets);
        order.add(0, order.remove(number));
        faults.add(spoiled(Kind.FLOOR_FIRST, supersets.get(number) + " first", order));
        return;
      }
    }
  }

  private boolean isOnFloor(int superset) {
    return supersets.get(superset).stream().allMatch(Candidate::floor);
  }

  private boolean isPair(int superset) {
    return supersets.get(superset).stream().noneMatch(Candidate::unilateral);
  }

  /** Whether new pairs rest other parts of the body than before; else a swap is no fault. */
  private boolean tellsPairsApart(int one, int other) {
    return IntStream.of(0, 1)
        .allMatch(
            position ->
                !part(supersets.get(one).get(position))
                    .equals(part(supersets.get(other).get(position))));
  }

  private Optional<MovementPattern.Group> part(Candidate exercise) {
    return session
        .facts()
        .catalogue()
        .wants()
        .patternOf(exercise.exercise())
        .map(MovementPattern::group);
  }

  private Spoiled swapped(int one, int other) {
    List<List<Candidate>> order = new ArrayList<>(supersets);
    order.set(one, List.of(supersets.get(one).get(0), supersets.get(other).get(1)));
    order.set(other, List.of(supersets.get(other).get(0), supersets.get(one).get(1)));
    return spoiled(Kind.SWAPPED, order.get(one) + " and " + order.get(other), order);
  }

  private Spoiled spoiled(Kind kind, String what, List<List<Candidate>> order) {
    List<Candidate> places = order.stream().flatMap(List::stream).toList();
    return new Spoiled(kind, mapped.reference().number(), what, session, session.with(places));
  }
}
