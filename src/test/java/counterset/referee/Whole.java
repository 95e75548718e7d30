package counterset.referee;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import counterset.model.Equipment;
import counterset.model.Exercise;
import counterset.model.Need;
import counterset.model.Owned;
import counterset.score.EquipShare;
import counterset.score.IsoSide;
import counterset.score.OneSidedShare;
import counterset.score.Twin;
import java.util.List;

/** What only the session as a whole has: its one-sided share, its movements, its equipment. */
record Whole(CpModel model, Request request, Objective objective, List<Layer> layers, Work work) {

  void charge() {
    if (request.perSuperset() == 2) {
      chargeOneSidedShare();
    }
    if (!request.shares().isForLegs()) {
      objective.charge(IsoSide.class, work.count(e -> e.isUnilateral() && !e.multiJoint()));
    }
    chargeTwins();
    chargeEquipment();
  }

  /** From one percentage, rounded down, to another, rounded up, of the supersets. */
  private void chargeOneSidedShare() {
    boolean legs = request.shares().isForLegs();
    int supersets = layers.size();
    LinearExprBuilder over = LinearExpr.newBuilder();
    layers.forEach(layer -> over.add(layer.some(Filling::isOneSided)));
    over.add(-(supersets * (legs ? 68 : 50) + 99) / 100);
    LinearExprBuilder under = LinearExpr.newBuilder();
    layers.forEach(layer -> under.addTerm(layer.some(Filling::isOneSided), -1));
    under.add(supersets * (legs ? 40 : 15) / 100);
    IntVar away = model.newIntVar(0, supersets, "");
    model.addGreaterOrEqual(away, over.build());
    model.addGreaterOrEqual(away, under.build());
    objective.charge(OneSidedShare.class, away);
  }

  /** One of each movement is free; half as many as its pattern is to get, if that is more. */
  private void chargeTwins() {
    for (List<Choice> movement : work.groups(Exercise::family).values()) {
      String family = movement.get(0).exercise().family();
      long due =
          request.candidates().stream()
              .filter(c -> c.exercise().family().equals(family))
              .mapToLong(c -> request.shares().withInherited(request.pattern(c)))
              .max()
              .orElseThrow();
      long more = request.wanted().size() <= 3 ? request.shares().unit() : 0;
      long free = Math.max(1, (due * request.places() + more) / (2 * request.shares().unit()));
      LinearExprBuilder again = LinearExpr.newBuilder();
      again.add(work.sum(movement::contains, choice -> 1));
      again.add(-free);
      objective.charge(Twin.class, Objective.atLeast(model, again.build(), movement.size()));
    }
  }

  private void chargeEquipment() {
    long items =
        request.problem().equipment().stream().filter(it -> of(it).comfortIn().isEmpty()).count();
    for (Owned owned : request.problem().equipment()) {
      if (of(owned).comfortIn().isEmpty()) {
        LinearExpr used = work.sum(choice -> needs(choice.exercise(), owned), Choice::positions);
        chargeShare(used, request.places() / (int) Math.max(4, items + 2));
      }
    }
    if (!request.problem().equipment().isEmpty()) {
      LinearExpr loaded = work.sum(choice -> isLoaded(choice.exercise()), Choice::positions);
      chargeShare(loaded, 55 * request.places() / 100);
    }
  }

  private void chargeShare(LinearExpr places, int due) {
    LinearExprBuilder lacking = LinearExpr.newBuilder();
    lacking.addTerm(places, -1);
    lacking.add(due);
    objective.charge(EquipShare.class, Objective.atLeast(model, lacking.build(), due));
  }

  private static boolean needs(Exercise exercise, Owned owned) {
    return exercise.needs().stream().map(Need::equipment).anyMatch(owned.id()::equals);
  }

  /** What carries the client counts only if there is nothing to lift, a mere comfort never. */
  private boolean isLoaded(Exercise exercise) {
    List<Owned> all = request.problem().equipment();
    boolean lifts = all.stream().anyMatch(owned -> !of(owned).support());
    List<Owned> loads =
        all.stream()
            .filter(owned -> of(owned).comfortIn().isEmpty() || !of(owned).support())
            .filter(owned -> of(owned).support() != lifts)
            .toList();
    return loads.isEmpty() || loads.stream().anyMatch(owned -> needs(exercise, owned));
  }

  private Equipment of(Owned owned) {
    return request.catalogue().equipment().get(owned.id());
  }
}
