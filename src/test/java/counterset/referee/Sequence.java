package counterset.referee;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import counterset.model.Problem;
import counterset.score.FloorTrip;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;

/**
 * The supersets one after another, as a flow through layers: the chosen filling of one superset and
 * that of the next are joined by one arc, which knows what the rest between them costs. Arcs whose
 * change-over does not fit in the rest do not exist.
 */
final class Sequence {

  private final CpModel model;
  private final Objective objective;
  private final Handover handover;
  private final FillingCost cost;
  private final int room;
  private final List<Choice> holes;
  private final List<Layer> layers = new ArrayList<>();
  private final LinearExprBuilder floorTrips = LinearExpr.newBuilder();
  private int arcs;

  Sequence(
      CpModel model, Problem problem, Objective objective, Handover handover, FillingCost cost) {
    this.model = model;
    this.objective = objective;
    this.handover = handover;
    this.cost = cost;
    this.room = FillingCost.roomInRest(problem.clock());
    this.holes = Collections.nCopies(problem.clock().perSuperset(), null);
  }

  /**
   * Lays out the supersets.
   *
   * @param filled by superset, the fillings with an exercise
   * @param neverEmpty whether a superset has to have an exercise
   */
  void lay(int supersets, int choices, IntFunction<List<Filling>> filled, IntPredicate neverEmpty) {
    Set<Exit> exits = Set.of(Exit.BEFORE_ALL);
    for (int superset = 0; superset < supersets; superset++) {
      List<Filling> fillings = new ArrayList<>();
      for (Filling filling : filled.apply(superset)) {
        if (exits.stream().anyMatch(exit -> canFollow(exit, filling.entry()))) {
          fillings.add(filling);
        }
      }
      if (!neverEmpty.test(superset)) {
        for (Exit exit : exits) {
          fillings.add(empty(exit));
        }
      }
      Layer layer = Layer.of(model, fillings, choices);
      for (int i = 0; i < fillings.size(); i++) {
        objective.earn(layer.chosen().get(i), fillings.get(i).points());
        floorTrips.addTerm(layer.chosen().get(i), fillings.get(i).floorTrips());
      }
      if (superset > 0) {
        join(layers.get(superset - 1), layer);
      }
      layers.add(layer);
      exits = new LinkedHashSet<>();
      for (Filling filling : fillings) {
        exits.add(filling.exit());
      }
    }
  }

  private Filling empty(Exit carried) {
    return new Filling(holes, Entry.empty(carried), carried, 0, 0);
  }

  /** The seconds of a rest's change-over; more than any rest has if it is not possible. */
  private int seconds(Exit exit, Entry entry) {
    if (!entry.follows(exit)) {
      return Integer.MAX_VALUE;
    }
    if (entry.isEmpty() || exit.position() == null) {
      return 0;
    }
    return handover.seconds(
        exit.inUse(), exit.position(), entry.needs(), entry.keeps(), entry.position());
  }

  /** Whether a superset can come after another, or first of all. */
  boolean canFollow(Exit exit, Entry entry) {
    return seconds(exit, entry) <= room;
  }

  private void join(Layer before, Layer after) {
    Map<Exit, LinearExprBuilder> exits = before.byExit();
    Map<Entry, LinearExprBuilder> entries = after.byEntry();
    Map<Entry, LinearExprBuilder> into = new HashMap<>();
    entries.keySet().forEach(entry -> into.put(entry, LinearExpr.newBuilder()));
    exits.forEach(
        (exit, literals) -> {
          LinearExprBuilder out = LinearExpr.newBuilder();
          for (Entry entry : entries.keySet()) {
            int seconds = seconds(exit, entry);
            if (seconds <= room) {
              BoolVar arc = arc(exit, entry, seconds);
              out.add(arc);
              into.get(entry).add(arc);
            }
          }
          model.addEquality(literals.build(), out.build());
        });
    entries.forEach((entry, sum) -> model.addEquality(sum.build(), into.get(entry).build()));
  }

  private BoolVar arc(Exit exit, Entry entry, int seconds) {
    BoolVar arc = model.newBoolVar("");
    arcs++;
    if (!entry.isEmpty() && exit.position() != null) {
      int points =
          handover.cost(exit.inUse(), entry.needs(), entry.keeps(), seconds, room)
              + cost.neighbours(exit.neighbour(), entry.neighbour())
              + cost.turning(exit.position(), entry.position());
      objective.earn(arc, -points);
      if (!exit.position().isFloor() && entry.position().isFloor()) {
        floorTrips.add(arc);
      }
    }
    return arc;
  }

  /** Charges going down after the first time. */
  void chargeFloorTrips(int most) {
    floorTrips.add(-1);
    objective.charge(FloorTrip.class, Objective.atLeast(model, floorTrips.build(), most));
  }

  List<Layer> layers() {
    return layers;
  }

  int arcs() {
    return arcs;
  }
}
