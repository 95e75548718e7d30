package counterset.referee;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import counterset.model.Exercise;
import counterset.score.BackRun;
import counterset.score.Constraint;
import counterset.score.FloorEarly;
import counterset.score.GripRun;
import counterset.score.HardFinish;
import counterset.score.Merit;
import counterset.score.OpenSmall;
import counterset.score.ShoulderRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;

/** How a session goes, place by place: how it opens and ends, what never rests, the floor. */
record Course(CpModel model, Request request, Objective objective, List<Layer> layers) {

  private static final int GRIP = 1;
  private static final int BACK = 2;
  private static final int SHOULDER = 4;
  private static final int RUN = 4;
  private static final int BIG = 3;
  private static final int MOST_WANTED = 4;

  void charge() {
    if (!request.isNarrow()) {
      chargeRuns(GripRun.class, GRIP);
      chargeRuns(BackRun.class, BACK);
      chargeRuns(ShoulderRun.class, SHOULDER);
    }
    if (layers.size() > 1) {
      chargeFloor();
    }
    if (layers.size() > 1 && request.perSuperset() > 1) {
      chargeOpening();
    }
    if (layers.size() > 2) {
      objective.charge(
          HardFinish.class, layers.get(layers.size() - 1).some(has(c -> c.merit().tier() >= BIG)));
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

  /** A superset with a hole in it opens as well as any, and so does one where nothing better is. */
  private void chargeOpening() {
    boolean possible =
        request.usable().stream().anyMatch(c -> opens(c.merit(), c.exercise(), request.pattern(c)));
    if (possible) {
      objective.charge(
          OpenSmall.class,
          layers
              .get(0)
              .some(
                  filling ->
                      filling.isFull()
                          && filling.places().stream()
                              .noneMatch(c -> opens(c.merit(), c.exercise(), c.pattern()))));
    }
  }

  private boolean opens(Merit merit, Exercise exercise, String pattern) {
    return merit.tier() >= BIG
        && !exercise.isUnilateral()
        && request.shares().rank(pattern) < MOST_WANTED;
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

  private static boolean begins(Filling filling) {
    return filling.occurrences().get(0).onFloor();
  }

  private static boolean ends(Filling filling) {
    Choice last = filling.places().get(filling.places().size() - 1);
    return last != null && last.onFloor();
  }
}
