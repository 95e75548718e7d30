package counterset.report.html;

import counterset.explain.BlockWords;
import counterset.explain.FaultWords;
import counterset.explain.ItemWords;
import counterset.explain.TrackWords;
import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Equipment;
import counterset.model.Intervals;
import counterset.model.Item;
import counterset.model.Limitation;
import counterset.model.Owned;
import counterset.model.Plan;
import counterset.model.Target;
import counterset.report.Numbers;
import counterset.report.Times;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What was asked, and what is wrong with the session, if anything.
 *
 * @param broken rules that it breaks
 * @param unmet wishes that it leaves unmet
 * @param facts what was asked, as names and values
 */
record Head(
    String title,
    List<String> broken,
    List<String> unmet,
    boolean interrupted,
    boolean empty,
    List<Line> facts) {

  static Head of(Plan plan, Catalogue catalogue) {
    return new Head(
        plan.problem().title(),
        faults(plan, catalogue, true),
        faults(plan, catalogue, false),
        !plan.solver().complete(),
        plan.totals().supersets() == 0,
        facts(plan, catalogue));
  }

  /** Whether there is something to warn of. */
  boolean warns() {
    return !broken.isEmpty() || !unmet.isEmpty() || interrupted || empty;
  }

  boolean breaksRules() {
    return !broken.isEmpty();
  }

  boolean missesWishes() {
    return !unmet.isEmpty();
  }

  private static List<String> faults(Plan plan, Catalogue catalogue, boolean hard) {
    return plan.matches().stream()
        .filter(FaultWords::isFault)
        .filter(match -> FaultWords.isBrokenRule(match) == hard)
        .map(match -> FaultWords.of(match, plan, catalogue))
        .distinct()
        .toList();
  }

  private static List<Line> facts(Plan plan, Catalogue catalogue) {
    List<Line> facts = new ArrayList<>();
    plan.problem().date().ifPresent(date -> facts.add(new Line("Date", date.toString())));
    facts.add(new Line("Length", length(plan)));
    facts.add(new Line("Clock", clock(plan.problem().clock())));
    facts.add(new Line("Level", plan.problem().level() + " of 3"));
    facts.add(
        new Line(
            "Targets",
            English.list(
                plan.problem().targets().stream().map(it -> target(it, catalogue)).toList())));
    facts.add(new Line("Equipment", equipment(plan, catalogue)));
    List<String> limits =
        plan.problem().limitations().stream()
            .map(catalogue.limitations()::get)
            .map(Limitation::name)
            .toList();
    facts.add(new Line("Limitations", limits.isEmpty() ? "none" : English.list(limits)));
    TrackWords words = new TrackWords(catalogue);
    if (!plan.tracks().isEmpty()) {
      facts.add(
          new Line("Tracks", String.join("; ", plan.tracks().stream().map(words::of).toList())));
    }
    return facts;
  }

  private static String length(Plan plan) {
    Intervals clock = plan.problem().clock();
    String rounds = clock.rounds() == 1 ? "" : ", " + clock.rounds() + " rounds each";
    return Times.clock(plan.totals().seconds())
        + " of "
        + Times.clock(60 * plan.problem().minutes())
        + ", "
        + English.count(plan.totals().supersets(), BlockWords.name(plan))
        + rounds;
  }

  private static String clock(Intervals clock) {
    String between = clock.between() == 0 ? "" : ", " + clock.between() + " s to switch";
    return clock.work() + " s work" + between + ", " + clock.rest() + " s rest";
  }

  private static String target(Target target, Catalogue catalogue) {
    String name = Names.muscle(target.muscle(), catalogue).toLowerCase(Locale.ROOT);
    return target.emphasis() == 1 ? name : name + " (x" + target.emphasis() + ")";
  }

  private static String equipment(Plan plan, Catalogue catalogue) {
    ItemWords words = new ItemWords(plan.problem());
    List<String> owned =
        plan.problem().equipment().stream().map(it -> owned(it, catalogue, words)).toList();
    return owned.isEmpty() ? "none" : English.list(owned);
  }

  private static String owned(Owned owned, Catalogue catalogue, ItemWords words) {
    Equipment equipment = catalogue.equipment().get(owned.id());
    String what = words.said(new Item(equipment, owned.count(), Optional.empty()));
    List<String> kg = owned.kg().stream().map(it -> Numbers.rounded(it, 3)).toList();
    return kg.isEmpty() ? what : what + " of " + String.join(" or ", kg) + " kg";
  }
}
