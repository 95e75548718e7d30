package counterset.referee;

import counterset.model.MovementPattern;
import counterset.model.MovementPattern.Group;
import counterset.model.Pairing;
import counterset.model.SupersetKind;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** What the exercises of a full superset leave to be desired as partners, in points. */
final class PairCosts {

  private static final int WORST = 16;
  private static final int BACK = 2;
  private static final int BOTH_SIDES = 4;
  private static final int NOT_THE_SAME = 12;

  private final Request request;

  PairCosts(Request request) {
    this.request = request;
  }

  /** The points of a full superset of two or more. */
  int of(List<Choice> places) {
    Pairing pairing = request.problem().pairing();
    if (pairing == Pairing.FREE) {
      return 0;
    }
    if (places.get(0).oneSided()) {
      return BOTH_SIDES;
    }
    int links = places.size() - 1;
    if (pairing == Pairing.COMPOUND) {
      SupersetKind weakest =
          IntStream.range(0, links)
              .mapToObj(link -> kind(places, link))
              .max(Comparator.naturalOrder())
              .orElseThrow();
      return weakest == SupersetKind.COMPOUND ? 0 : links * NOT_THE_SAME;
    }
    int points = 0;
    for (int i = 0; i < links; i++) {
      points += of(places.get(i), places.get(i + 1));
    }
    return points;
  }

  private static SupersetKind kind(List<Choice> places, int link) {
    return places.get(link).profile().kindWith(places.get(link + 1).profile());
  }

  private int of(Choice one, Choice other) {
    int shared = Long.bitCount(one.muscles() & other.muscles());
    boolean bentBacks = (one.merit().fatigue() & other.merit().fatigue() & BACK) != 0;
    int more = shared * (request.isNarrow() ? 2 : 5) + (bentBacks ? 5 : 0);
    return Math.min(WORST, patterns(one.pattern(), other.pattern()) + more);
  }

  private int patterns(String one, String other) {
    if (one.equals(other)) {
      return 14;
    }
    Optional<MovementPattern> first = pattern(one);
    Optional<MovementPattern> second = pattern(other);
    if (first.isEmpty() || second.isEmpty()) {
      return request.catalogue().wants().patterns().isEmpty() ? 0 : 6;
    }
    MovementPattern a = first.get();
    MovementPattern b = second.get();
    boolean whole = request.shares().isWhole();
    if (a.group() == Group.POWER && isSmall(b) || b.group() == Group.POWER && isSmall(a)) {
      return 14;
    }
    if (whole && a.group().isLegs() && b.group().isLegs()) {
      return a.big() && b.big() ? 12 : 8;
    }
    if (whole && isSmallArm(a) && isSmallArm(b)) {
      return 7;
    }
    if (a.pairs().contains(other) || b.pairs().contains(one)) {
      return 0;
    }
    return a.group() == b.group() ? within(a.group()) : between(Set.of(a.group(), b.group()));
  }

  private static boolean isSmall(MovementPattern pattern) {
    return pattern.group() == Group.SMALL_LEG || isSmallArm(pattern);
  }

  private static boolean isSmallArm(MovementPattern pattern) {
    return Set.of(Group.PUSH, Group.PULL).contains(pattern.group()) && !pattern.big();
  }

  private Optional<MovementPattern> pattern(String id) {
    return request.catalogue().wants().patterns().stream()
        .filter(pattern -> pattern.id().equals(id))
        .findFirst();
  }

  private static int within(Group group) {
    return group == Group.TRUNK || group == Group.SMALL_LEG ? 5 : 13;
  }

  /** Of two different groups. */
  private int between(Set<Group> groups) {
    long legs = groups.stream().filter(Group::isLegs).count();
    if (legs == 1) {
      return request.shares().isWhole() && !groups.contains(Group.TRUNK) ? 1 : 4;
    }
    if (groups.contains(Group.POWER)) {
      return groups.contains(Group.KNEE) ? 4 : 9;
    }
    if (legs == 2) {
      return groups.contains(Group.SMALL_LEG) ? 5 : 3;
    }
    if (groups.contains(Group.CONDITIONING)) {
      return 6;
    }
    return groups.contains(Group.TRUNK) ? 4 : 3;
  }
}
