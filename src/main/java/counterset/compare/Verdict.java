package counterset.compare;

import counterset.explain.English;
import counterset.model.Catalogue;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.List;

/** Which plan is better for whom, in sentences made from the figures. */
public final class Verdict {

  private final Comparison comparison;
  private final Audience audience;

  private Verdict(Comparison comparison, Catalogue catalogue) {
    this.comparison = comparison;
    this.audience = new Audience(catalogue);
  }

  /** A few sentences on each plan, the best first. */
  public static List<String> of(Comparison comparison, Catalogue catalogue) {
    return new Verdict(comparison, catalogue).lines();
  }

  private List<String> lines() {
    List<Compared> ranked = comparison.ranked();
    List<Compared> led = ranked.stream().filter(Compared::feasible).toList();
    List<String> lines = new ArrayList<>();
    if (led.isEmpty()) {
      lines.add("None of these has a session that can be led.");
    } else if (led.size() == 1) {
      lines.add(named(led.get(0)) + " is the only one that can be led.");
    } else {
      lines.add(named(led.get(0)) + ": " + best(led.get(0), led));
      led.stream().skip(1).forEach(it -> lines.add(named(it) + ": " + sentences(it, led.get(0))));
    }
    ranked.stream()
        .filter(it -> !it.feasible())
        .forEach(it -> lines.add(named(it) + " cannot be led as it is."));
    return lines;
  }

  private String best(Compared best, List<Compared> led) {
    List<Compared> equal =
        led.stream().skip(1).filter(it -> comparison.better().compare(best, it) == 0).toList();
    String by = comparison.sameProblem() ? "" : " by points a superset";
    String lead =
        equal.isEmpty()
            ? "the best of them" + by + ". "
            : "as good as " + numbers(equal) + by + ". ";
    return lead + English.capital(sentences(best, led.get(1)));
  }

  /** What speaks for a plan and against it, beside another, and for whom it is better. */
  private String sentences(Compared plan, Compared other) {
    Merits merits = Merits.of(plan, other, comparison);
    String than = "against option " + other.number() + ", ";
    StringBuilder text = new StringBuilder(than);
    if (merits.gains().isEmpty() && merits.losses().isEmpty()) {
      text.append("no difference that counts.");
    } else if (merits.gains().isEmpty()) {
      text.append("nothing better; ").append(English.list(merits.losses())).append('.');
    } else {
      text.append(English.list(merits.gains()));
      text.append(
          merits.losses().isEmpty()
              ? ", and nothing worse."
              : ", but " + English.list(merits.losses()) + ".");
    }
    List<String> who = new ArrayList<>(audience.of(problem(plan), problem(other)));
    who.addAll(merits.wants());
    if (!who.isEmpty()) {
      text.append(" Better for clients who ").append(English.list(who)).append('.');
    }
    return text.toString();
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
