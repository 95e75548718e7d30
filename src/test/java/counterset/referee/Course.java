package counterset.referee;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import counterset.model.MovementPattern;
import counterset.score.BackRun;
import counterset.score.Candidate;
import counterset.score.Constraint;
import counterset.score.FloorEarly;
import counterset.score.GripRun;
import counterset.score.HardFinish;
import counterset.score.OneSidedRun;
import counterset.score.OpenSmall;
import counterset.score.PairAgain;
import counterset.score.ShoulderRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** How a session goes, place by place: how it opens and ends, what never rests, the floor. */
record Course(CpModel model, Request request, Objective objective, List<Layer> layers) {

  private static final int GRIP = 1;
  private static final int BACK = 2;
  private static final int SHOULDER = 4;
  private static final int RUN = 4;
  private static final int MANY = 6;
  private static final int BIG = 4;
  private static final int HARD = 3;

  void charge() {
    if (!request.isNarrow()) {
      chargeRuns(GripRun.class, GRIP);
      chargeRuns(BackRun.class, BACK);
    }
    boolean pushes =
        request.catalogue().wants().patterns().stream()
            .filter(it -> it.group() == MovementPattern.Group.PUSH)
            .anyMatch(it -> request.wanted().contains(it.id()));
    if (!request.isNarrow() || !pushes) {
      chargeRuns(ShoulderRun.class, SHOULDER);
    }
    if (request.perSuperset() == 2 && request.wanted().size() >= MANY) {
      chargePairs();
    }
    if (request.perSuperset() > 1) {
      chargeSides();
    }
    if (request.isForUpperBody()) {
      chargeRising();
    } else if (layers.size() > 1) {
      chargeFloor();
    }
    if (layers.size() > 1 && request.perSuperset() > 1) {
      chargeOpening();
    }
    if (layers.size() > 2) {
      objective.charge(
          HardFinish.class, layers.get(layers.size() - 1).some(has(c -> c.merit().tier() >= HARD)));
    }
  }

  private static Predicate<Filling> has(Predicate<Choice> which) {
    return filling -> filling.places().stream().filter(Objects::nonNull).anyMatch(which);
  }

  /** One for each four places running that all tire the same; a hole is a rest. */
  private void chargeRuns(Class<? extends Constraint> constraint, int fatigue) {
    List<LinearExpr> tires = new ArrayList<>();
    for (Layer layer : layers) {
      for (int position = 0; position < request.perSuperset(); position++) {
        int at = position;
        tires.add(
            layer.some(
                filling -> {
                  Choice choice = filling.places().get(at);
                  return choice != null && (choice.merit().fatigue() & fatigue) != 0;
                }));
      }
    }
    for (int last = RUN - 1; last < tires.size(); last++) {
      LinearExprBuilder all = LinearExpr.newBuilder();
      tires.subList(last - RUN + 1, last + 1).forEach(all::add);
      all.add(1 - RUN);
      objective.charge(constraint, Objective.atLeast(model, all.build(), 1));
    }
  }

  /** Each superset beyond the first that pairs the same two leg patterns. */
  private void chargePairs() {
    Set<String> legs =
        request.catalogue().wants().patterns().stream()
            .filter(it -> it.group().isLegs())
            .map(MovementPattern::id)
            .collect(Collectors.toSet());
    for (String one : legs) {
      for (String other : legs) {
        if (one.compareTo(other) < 0) {
          LinearExprBuilder again = LinearExpr.newBuilder();
          layers.forEach(layer -> again.add(layer.some(filling -> pairs(filling, one, other))));
          again.add(-1);
          objective.charge(PairAgain.class, Objective.atLeast(model, again.build(), layers.size()));
        }
      }
    }
  }

  private static boolean pairs(Filling filling, String one, String other) {
    return filling.isFull()
        && filling.places().stream()
            .map(Choice::pattern)
            .collect(Collectors.toSet())
            .equals(Set.of(one, other));
  }

  /** One for each three supersets running of which each begins with a one-sided exercise. */
  private void chargeSides() {
    List<LinearExpr> sides = new ArrayList<>();
    for (Layer layer : layers) {
      sides.add(
          layer.some(
              filling -> {
                Choice first = filling.places().get(0);
                return first != null && first.oneSided();
              }));
    }
    for (int last = 2; last < sides.size(); last++) {
      LinearExprBuilder all = LinearExpr.newBuilder();
      sides.subList(last - 2, last + 1).forEach(all::add);
      all.add(-2);
      objective.charge(OneSidedRun.class, Objective.atLeast(model, all.build(), 1));
    }
  }

  /** A superset with a hole in it opens as well as any, and so does one where nothing better is. */
  private void chargeOpening() {
    Set<String> openers =
        request.catalogue().wants().patterns().stream()
            .filter(MovementPattern::opens)
            .map(MovementPattern::id)
            .collect(Collectors.toSet());
    List<Candidate> all =
        request.usable().stream()
            .filter(c -> c.merit().fillsPattern() && !c.exercise().isUnilateral())
            .filter(c -> request.shares().withInherited(request.pattern(c)) > 0)
            .toList();
    List<Candidate> first = all.stream().filter(c -> openers.contains(request.pattern(c))).toList();
    Set<String> trunk =
        request.catalogue().wants().patterns().stream()
            .filter(it -> it.group() == MovementPattern.Group.TRUNK)
            .map(MovementPattern::id)
            .collect(Collectors.toSet());
    List<Candidate> able =
        first.isEmpty()
            ? all.stream().filter(c -> !trunk.contains(request.pattern(c))).toList()
            : first;
    able = rather(able, Candidate::loaded);
    able = rather(able, c -> !c.exercise().position().isFloor());
    int hardest = able.stream().mapToInt(c -> c.merit().tier()).max().orElse(0);
    int tier = Math.min(hardest, first.isEmpty() ? 1 : BIG);
    Map<String, String> kinds =
        able.stream()
            .filter(c -> c.merit().tier() >= tier)
            .collect(Collectors.toMap(c -> c.exercise().id(), this::group));
    long patterns = kinds.values().stream().distinct().count();
    for (int many = 1; many <= Math.min(2, patterns); many++) {
      int enough = many;
      objective.charge(
          OpenSmall.class, layers.get(0).some(f -> f.isFull() && openers(f, kinds) < enough));
    }
  }

  /** The group of its movement pattern, or the pattern itself if the catalogue has none of it. */
  private String group(Candidate candidate) {
    String id = request.pattern(candidate);
    return request.catalogue().wants().patterns().stream()
        .filter(pattern -> pattern.id().equals(id))
        .map(pattern -> pattern.group().name())
        .findFirst()
        .orElse(id);
  }

  private static List<Candidate> rather(List<Candidate> all, Predicate<Candidate> which) {
    return all.stream().anyMatch(which) ? all.stream().filter(which).toList() : all;
  }

  private static long openers(Filling filling, Map<String, String> kinds) {
    return filling.places().stream()
        .map(c -> kinds.get(c.exercise().id()))
        .filter(Objects::nonNull)
        .distinct()
        .count();
  }

  /** Once the last position of a superset was on the floor, no superset begins off it. */
  private void chargeFloor() {
    BoolVar down = null;
    for (Layer layer : layers) {
      if (down != null) {
        LinearExprBuilder up = LinearExpr.newBuilder();
        up.add(down);
        up.add(layer.some(filling -> !filling.occurrences().isEmpty() && !begins(filling)));
        up.add(-1);
        objective.charge(FloorEarly.class, Objective.atLeast(model, up.build(), 1));
      }
      BoolVar then = model.newBoolVar("");
      model.addGreaterOrEqual(then, layer.some(Course::ends));
      if (down != null) {
        model.addImplication(down, then);
      }
      down = then;
    }
  }

  /** Each time beyond the first that one superset ends on the floor and the next begins off it. */
  private void chargeRising() {
    LinearExprBuilder again = LinearExpr.newBuilder();
    for (int next = 1; next < layers.size(); next++) {
      BoolVar rises = model.newBoolVar("");
      LinearExprBuilder both = LinearExpr.newBuilder();
      both.add(layers.get(next - 1).some(Course::ends));
      both.add(layers.get(next).some(f -> !f.occurrences().isEmpty() && !begins(f)));
      both.add(-1);
      model.addGreaterOrEqual(rises, both.build());
      again.add(rises);
    }
    again.add(-1);
    objective.charge(FloorEarly.class, Objective.atLeast(model, again.build(), layers.size()));
  }

  private static boolean begins(Filling filling) {
    return filling.occurrences().get(0).onFloor();
  }

  private static boolean ends(Filling filling) {
    Choice last = filling.places().get(filling.places().size() - 1);
    return last != null && last.onFloor();
  }
}
