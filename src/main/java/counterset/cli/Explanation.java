package counterset.cli;

import counterset.model.Catalogue;
import counterset.model.Intervals;
import counterset.model.Plan;
import counterset.search.Obstacles;
import counterset.search.WayOut;
import counterset.search.WaysOut;
import counterset.timeline.SessionLength;
import java.util.List;

/** Says on standard error why a plan is not all that was asked for, and what would free it. */
final class Explanation {

  private final Shell shell;
  private final Plan plan;
  private final Catalogue catalogue;

  private Explanation(Shell shell, Plan plan, Catalogue catalogue) {
    this.shell = shell;
    this.plan = plan;
    this.catalogue = catalogue;
  }

  /** There is no session to hand out. */
  static void ofRefusal(Shell shell, Plan plan, Catalogue catalogue) {
    Explanation words = new Explanation(shell, plan, catalogue);
    int missing = words.secondsMissing();
    if (missing > 0) {
      shell.say("No feasible session: " + words.shortest());
    } else if (plan.score().feasible()) {
      shell.say("No feasible session: no exercise of the catalogue suits all that was asked for.");
      words.obstacles();
    } else {
      shell.say("No feasible session: the best one found still breaks a rule.");
      Feasibility.hardFaults(plan, catalogue).forEach(shell::say);
      words.obstacles();
    }
    words.waysOut(missing > 0 ? ", or a clock that is " + missing + " s shorter" : "");
  }

  /** There is one, and it leaves wishes unmet; says nothing where it meets them all. */
  static void ofUnmetWishes(Shell shell, Plan plan, Catalogue catalogue) {
    if (plan.score().medium() < 0) {
      Explanation words = new Explanation(shell, plan, catalogue);
      shell.say("Not all wishes are met.");
      words.obstacles();
      words.waysOut("");
    }
  }

  private void obstacles() {
    Obstacles.of(plan, catalogue).forEach(line -> shell.say("In the way: " + line));
  }

  /**
   * What was tried out and helps.
   *
   * @param instead added to the first way if that is more minutes alone
   */
  private void waysOut(String instead) {
    if (!plan.solver().complete()) {
      return;
    }
    WaysOut search = new WaysOut(plan, catalogue);
    List<WayOut> ways =
        Interruption.during(
            () -> Progress.during(shell, "Looking for a way out", search::find), search::stop);
    if (ways.isEmpty()) {
      shell.say("What would free it: more than two changes at once. Maybe ask for less.");
      return;
    }
    boolean whole = ways.get(0).whole();
    String first = ways.get(0).phrase();
    String more = first.matches("\\d+ min") ? instead : "";
    shell.say((whole ? "What would free it: " : "What would help a little: ") + first + more + ".");
    ways.stream().skip(1).forEach(way -> shell.say("  Or: " + way.phrase() + "."));
  }

  private int secondsMissing() {
    int shortest = SessionLength.seconds(plan.problem().clock(), 1);
    return Math.max(0, shortest - 60 * plan.problem().minutes());
  }

  private String shortest() {
    Intervals clock = plan.problem().clock();
    return "the shortest one with this clock takes "
        + SessionLength.seconds(clock, 1)
        + " s (get ready "
        + clock.getReady()
        + ", warm-up "
        + clock.warmUp()
        + ", one superset "
        + SessionLength.blockSeconds(clock) * clock.rounds()
        + ", cool-down "
        + clock.coolDown()
        + "), but the cap is "
        + plan.problem().minutes()
        + " min.";
  }
}
