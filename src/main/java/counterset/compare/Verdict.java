package counterset.compare;

import counterset.explain.English;
import counterset.model.Catalogue;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Which plan is better for whom, in sentences made from the figures.
 *
 * <p>Time is what a client has or has not. So plans of the same minutes are set against each other
 * first, and then the best of each length against the next longer one.
 */
public final class Verdict {

  private final Comparison comparison;
  private final Audience audience;

  private Verdict(Comparison comparison, Catalogue catalogue) {
    this.comparison = comparison;
    this.audience = new Audience(catalogue);
  }

  /** A few sentences on each plan, the best first; by length if lengths differ. */
  public static List<String> of(Comparison comparison, Catalogue catalogue) {
    return new Verdict(comparison, catalogue).lines();
  }

  private List<String> lines() {
    Map<Integer, List<Compared>> byMinutes = new TreeMap<>();
    List<Compared> ranked = comparison.ranked();
    ranked.stream()
        .filter(Compared::feasible)
        .forEach(
            it -> byMinutes.computeIfAbsent(it.facts().minutes(), m -> new ArrayList<>()).add(it));
    List<String> lines = new ArrayList<>();
    if (byMinutes.isEmpty()) {
      lines.add("None of these can be led.");
      return lines;
    }
    byMinutes.values().forEach(group -> among(group, lines));
    between(byMinutes.values().stream().map(group -> group.get(0)).toList(), lines);
    if (comparison.feasible().size() == 1) {
      lines.add(named(ranked.get(0)) + " is the only one that can be led.");
    }
    ranked.stream()
        .filter(it -> !it.feasible() && comparison.feasible().size() > 1)
        .forEach(it -> lines.add(named(it) + " cannot be led as it is."));
    return lines;
  }

  /** Plans of one length, the best first. */
  private void among(List<Compared> plans, List<String> lines) {
    if (plans.size() < 2) {
      return;
    }
    Compared best = plans.get(0);
    Compared second = plans.get(1);
    List<Compared> equal =
        plans.stream().skip(1).filter(it -> comparison.better().compare(best, it) == 0).toList();
    String of = plans.size() == comparison.feasible().size() ? "" : in(best);
    String by = Comparison.haveOneShape(best, second) ? "" : ", by points a superset";
    String rank = equal.isEmpty() ? "the best" + of + by : "as good as " + numbers(equal) + of + by;
    lines.add(named(best) + ": " + rank + ". " + against(best, second));
    lines.add(named(second) + ": " + inReturn(second, best));
    plans.stream().skip(2).forEach(plan -> lines.add(named(plan) + ": " + against(plan, best)));
  }

  private static String in(Compared plan) {
    return " in " + English.count(plan.facts().minutes(), "minute");
  }

  /** What speaks for a plan and against it, beside another of its length, and whom it suits. */
  private String against(Compared plan, Compared other) {
    Merits merits = Merits.of(plan, other);
    return "Against option "
        + other.number()
        + ": "
        + balance(merits)
        + "."
        + suits(plan, other, merits);
  }

  /** The same of a plan that the other was set against just before: only what speaks for it. */
  private String inReturn(Compared plan, Compared other) {
    Merits merits = Merits.of(plan, other);
    String gains = merits.gains().isEmpty() ? "nothing better" : English.list(merits.gains());
    return "in return, " + gains + "." + suits(plan, other, merits);
  }

  private String suits(Compared plan, Compared other, Merits merits) {
    List<String> clauses = audience.of(problem(plan), problem(other));
    if (clauses.isEmpty() && merits.wants().isEmpty()) {
      boolean worse = merits.gains().isEmpty() && !merits.losses().isEmpty();
      return worse ? " Nothing speaks for it" + change(plan, other) + "." : "";
    }
    return (merits.gains().isEmpty() ? " For clients who " : " Better for clients who ")
        + who(clauses, merits.wants())
        + ".";
  }

  /** Of one problem, a worse session may still be welcome for being another. */
  private static String change(Compared plan, Compared other) {
    Shared shared = Shared.of(plan, other);
    return Comparison.haveOneProblem(plan, other) && 2 * shared.exercises() <= shared.ofOne()
        ? " but a change: only "
            + shared.exercises()
            + " of its "
            + English.count(shared.ofOne(), "exercise")
            + (shared.exercises() == 1 ? " is" : " are")
            + " in option "
            + other.number()
        : "";
  }

  private static String balance(Merits merits) {
    if (merits.gains().isEmpty()) {
      return merits.losses().isEmpty()
          ? "no difference that counts"
          : English.list(merits.losses());
    }
    return English.list(merits.gains())
        + (merits.losses().isEmpty()
            ? ", and nothing worse"
            : ", but " + English.list(merits.losses()));
  }

  /** What clients have comes first, what they want makes it weigh more. */
  private static String who(List<String> have, List<String> want) {
    String wants = "want " + English.list(want);
    return have.isEmpty()
        ? wants
        : English.list(have) + (want.isEmpty() ? "" : ", above all if they " + wants);
  }

  /** What more minutes bring and cost, from one length to the next. */
  private void between(List<Compared> bests, List<String> lines) {
    for (int i = 1; i < bests.size(); i++) {
      Compared shorter = bests.get(i - 1);
      Compared longer = bests.get(i);
      List<String> brings = new ArrayList<>(more(longer.facts(), shorter.facts()));
      Merits merits = Merits.of(longer, shorter);
      brings.addAll(merits.gains());
      List<String> rest = Merits.of(shorter, longer).wants();
      lines.add(
          English.count(longer.facts().minutes(), "minute")
              + " instead of "
              + shorter.facts().minutes()
              + " (option "
              + longer.number()
              + ", not "
              + shorter.number()
              + "): "
              + balance(new Merits(brings, merits.losses(), List.of()))
              + ". Better for clients who "
              + who(List.of("have the time"), merits.wants())
              + "; the shorter one for clients who "
              + who(List.of("have only " + shorter.facts().minutes() + " minutes"), rest)
              + ".");
    }
  }

  private static List<String> more(Facts longer, Facts shorter) {
    List<String> more = new ArrayList<>();
    int supersets = longer.supersets() - shorter.supersets();
    int points = longer.points() - shorter.points();
    if (supersets > 0) {
      more.add(supersets + (supersets == 1 ? " superset more" : " supersets more"));
      if (points > 0) {
        more.add(English.count(points, "point") + " more in all");
      }
    }
    return more;
  }

  private static Problem problem(Compared compared) {
    return compared.plan().problem();
  }

  private static String numbers(List<Compared> plans) {
    return (plans.size() == 1 ? "option " : "options ")
        + English.list(plans.stream().map(it -> String.valueOf(it.number())).toList());
  }

  private static String named(Compared plan) {
    return "Option " + plan.number() + " (" + plan.label() + ")";
  }
}
