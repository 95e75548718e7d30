package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.Changeover;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Item;
import counterset.model.Plan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What comes before and after each interval of a plan. Intervals are told apart by their start. */
public final class Course {

  private final List<Interval> work;
  private final Map<Integer, Changeover> into = new HashMap<>();
  private final Map<Integer, List<Item>> inUse = new HashMap<>();

  /** Walks through a plan once. */
  public Course(Plan plan, Catalogue catalogue) {
    this.work =
        plan.timeline().stream().filter(interval -> interval.kind() == IntervalKind.WORK).toList();
    List<Item> items = new ArrayList<>();
    for (int i = 0; i < work.size(); i++) {
      if (i == 0) {
        items.addAll(Items.handled(work.get(0).exercise().orElseThrow(), catalogue));
      } else {
        Changeover changeover = plan.changeovers().get(i - 1);
        into.put(work.get(i).start(), changeover);
        items.removeAll(changeover.takeOff());
        items.addAll(changeover.putOn());
      }
      inUse.put(work.get(i).start(), List.copyOf(items));
    }
  }

  /** The next work interval after an interval, if there is one. */
  public Optional<Interval> nextWork(Interval interval) {
    return work.stream().filter(later -> later.start() >= interval.end()).findFirst();
  }

  /** The last work interval before an interval, if there is one. */
  public Optional<Interval> lastWork(Interval interval) {
    return work.stream()
        .filter(earlier -> earlier.end() <= interval.start())
        .reduce((first, second) -> second);
  }

  /** The changeover to a work interval; none to the first one. */
  public Optional<Changeover> changeoverInto(Interval interval) {
    return Optional.ofNullable(into.get(interval.start()));
  }

  /** The changeover in a pause. */
  public Optional<Changeover> changeoverIn(Interval pause) {
    return nextWork(pause).flatMap(this::changeoverInto);
  }

  /** What is held, worn or laid out during a work interval. */
  public List<Item> inUse(Interval interval) {
    return inUse.getOrDefault(interval.start(), List.of());
  }

  /**
   * Whether nothing but a changeover of no length lies between a work interval and the one before.
   */
  boolean followsWithoutPause(Interval interval) {
    return lastWork(interval).filter(last -> last.end() == interval.start()).isPresent();
  }
}
