package counterset.explain;

import counterset.model.At;
import counterset.model.Changeover;
import counterset.model.Exercise;
import counterset.model.Item;
import counterset.report.Plans;
import java.util.List;

/** Makes changeovers for tests. */
final class Changes {

  private Changes() {}

  static Changeover of(Exercise from, String to, List<Item> takeOff, List<Item> putOn) {
    Exercise next = Plans.CATALOGUE.exercises().get(to);
    return new Changeover(new At(1, 1), 1, from, next, 5, 25, takeOff, putOn);
  }
}
