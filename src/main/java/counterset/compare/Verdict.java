package counterset.compare;

import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Which plan is better for whom, in sentences made from the figures.
 *
 * <p>Limitations and time are what a client has or has not. So plans of the same limitations and
 * minutes are set against each other first, then the best of each length against the next longer
 * one, and what suits other clients last.
 */
public final class Verdict {

  private final Comparison comparison;
  private final Audience audience;

  private Verdict(Comparison comparison, Catalogue catalogue) {
    this.comparison = comparison;
    this.audience = new Audience(catalogue);
  }

  /** A few sentences on each plan, the best of its kind first. */
  public static List<String> of(Comparison comparison, Catalogue catalogue) {
    return new Verdict(comparison, catalogue).lines();
  }

  private List<String> lines() {
    List<Compared> ranked = comparison.ranked();
    List<Compared> led = ranked.stream().filter(Compared::feasible).toList();
    List<String> lines = new ArrayList<>();
    if (led.isEmpty()) {
      lines.add("None of these can be led.");
      return lines;
    }
    if (led.size() == 1) {
      lines.add(named(led.get(0)) + " is the only one that can be led.");
      return lines;
    }
    Map<Set<String>, Map<Integer, List<Compared>>> groups = new LinkedHashMap<>();
    comparison.feasible().stream()
        .sorted(Comparator.comparing(it -> limits(it).size()))
        .forEach(it -> groups.put(limits(it), new TreeMap<>()));
    led.forEach(
        it ->
            groups
                .get(limits(it))
                .computeIfAbsent(it.facts().minutes(), m -> new ArrayList<>())
                .add(it));
    groups.values().forEach(byMinutes -> byMinutes.values().forEach(it -> among(it, lines)));
    groups.values().forEach(byMinutes -> lengths(List.copyOf(byMinutes.values()), lines));
    limitations(List.copyOf(groups.values()), lines);
    ranked.stream()
        .filter(it -> !it.feasible())
        .forEach(it -> lines.add(named(it) + " cannot be led as it is."));
    return lines;
  }

  private static Set<String> limits(Compared plan) {
    return problem(plan).limitations();
  }

  /** Plans of one length for the same clients, the best first. */
  private void among(List<Compared> plans, List<String> lines) {
    if (plans.size() < 2) {
      return;
    }
    Compared best = plans.get(0);
    Compared second = plans.get(1);
    List<Compared> equal =
        plans.stream().skip(1).filter(it -> comparison.better().compare(best, it) == 0).toList();
    String of = group(best);
    String by = Comparison.haveOneShape(best, second) ? "" : ", by points a superset";
    String rank = equal.isEmpty() ? "the best" + of + by : "as good as " + numbers(equal) + of + by;
    lines.add(named(best) + ": " + rank + ". " + English.capital(pair(best, second).against()));
    lines.add(named(second) + ": " + pair(second, best).inReturn());
    plans.stream()
        .skip(2)
        .forEach(plan -> lines.add(named(plan) + ": " + pair(plan, best).against()));
  }

  /** Which of the groups, unless there is but one. */
  private String group(Compared plan) {
    List<Compared> led = comparison.feasible();
    boolean lengths = led.stream().anyMatch(it -> it.facts().minutes() != plan.facts().minutes());
    boolean clients = led.stream().anyMatch(it -> !limits(it).equals(limits(plan)));
    return (lengths ? " in " + English.count(plan.facts().minutes(), "minute") : "")
        + (clients ? " for clients " + audience.limits(problem(plan)) : "");
  }

  /** What more minutes bring and cost, from one length to the next. */
  private void lengths(List<List<Compared>> groups, List<String> lines) {
    for (int i = 1; i < groups.size(); i++) {
      Compared shorter = groups.get(i - 1).get(0);
      Compared longer = groups.get(i).get(0);
      Merits merits = Merits.of(longer, shorter);
      List<String> brings = new ArrayList<>();
      List<String> costs = new ArrayList<>();
      more(longer.facts(), shorter.facts(), brings, costs);
      brings.addAll(merits.gains());
      costs.addAll(merits.losses());
      String minutes = English.count(shorter.facts().minutes(), "minute");
      lines.add(
          English.count(longer.facts().minutes(), "minute")
              + " instead of "
              + shorter.facts().minutes()
              + instead(longer, shorter)
              + Sentences.balance(new Merits(brings, costs, List.of()))
              + ". Better for clients who "
              + Sentences.who(List.of("have the time"), merits.wants())
              + "; the shorter one for clients who "
              + Sentences.who(List.of("have only " + minutes), Merits.of(shorter, longer).wants())
              + ".");
    }
  }

  /** What it costs to suit other clients; that is not a matter of choice. */
  private void limitations(List<Map<Integer, List<Compared>>> groups, List<String> lines) {
    for (int i = 1; i < groups.size(); i++) {
      Compared other = groups.get(0).values().iterator().next().get(0);
      List<Compared> same = groups.get(i).get(other.facts().minutes());
      Compared plan = same == null ? groups.get(i).values().iterator().next().get(0) : same.get(0);
      lines.add(
          "For clients "
              + audience.limits(problem(plan))
              + instead(plan, other)
              + Sentences.balance(Merits.of(plan, other))
              + ". Whom a session suits goes before its points.");
    }
  }

  private static String instead(Compared plan, Compared other) {
    return " (option " + plan.number() + ", not " + other.number() + "): ";
  }

  private static void more(Facts longer, Facts shorter, List<String> brings, List<String> costs) {
    int supersets = longer.supersets() - shorter.supersets();
    int points = longer.points() - shorter.points();
    if (supersets > 0) {
      brings.add(supersets + (supersets == 1 ? " superset more" : " supersets more"));
    }
    if (supersets > 0 && points != 0) {
      String more = English.count(Math.abs(points), "point") + (points > 0 ? " more" : " less");
      (points > 0 ? brings : costs).add(more + " in all");
    }
  }

  private static Problem problem(Compared compared) {
    return compared.plan().problem();
  }

  private static String numbers(List<Compared> plans) {
    return (plans.size() == 1 ? "option " : "options ")
        + English.list(plans.stream().map(it -> String.valueOf(it.number())).toList());
  }

  private Sentences pair(Compared plan, Compared other) {
    return new Sentences(plan, other, audience);
  }

  private static String named(Compared plan) {
    return "Option " + plan.number() + " (" + plan.label() + ")";
  }
}
