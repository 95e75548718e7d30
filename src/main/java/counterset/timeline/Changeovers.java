package counterset.timeline;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Changeover;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Session;
import counterset.model.Superset;
import java.util.ArrayList;
import java.util.List;

/**
 * Walks through a session from one work interval to the next and tells what has to be handled in
 * between.
 */
public final class Changeovers {

  private Changeovers() {}

  /** All changeovers in order, those of no seconds included. */
  public static List<Changeover> of(Session session, Intervals clock, Catalogue catalogue) {
    Kit kit = new Kit(catalogue, session.work().distinct().toList());
    List<Changeover> changeovers = new ArrayList<>();
    long inUse = 0;
    Step last = null;
    for (Step next : steps(session, clock)) {
      Handling handling = kit.of(next.exercise());
      if (last != null) {
        boolean inside =
            last.at().superset() == next.at().superset() && last.round() == next.round();
        changeovers.add(
            new Changeover(
                last.at(),
                last.round(),
                last.exercise(),
                next.exercise(),
                kit.seconds(inUse, kit.of(last.exercise()), handling),
                inside ? Kit.roomInside(clock) : Kit.roomInRest(clock),
                kit.items(Kit.takenOff(inUse, handling)),
                kit.items(Kit.putOn(inUse, handling))));
      }
      inUse = Kit.inUseAfter(inUse, handling);
      last = next;
    }
    return changeovers;
  }

  /** The work intervals of a session in order. */
  static List<Step> steps(Session session, Intervals clock) {
    List<Step> steps = new ArrayList<>();
    for (Superset superset : session.supersets()) {
      for (int round = 1; round <= clock.rounds(); round++) {
        for (int position = 0; position < superset.exercises().size(); position++) {
          steps.add(
              new Step(
                  new At(superset.number(), position), round, superset.exercises().get(position)));
        }
      }
    }
    return steps;
  }

  /** One work interval. */
  record Step(At at, int round, Exercise exercise) {}
}
