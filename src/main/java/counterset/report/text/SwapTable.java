package counterset.report.text;

import counterset.explain.Difference;
import counterset.explain.DifferenceWords;
import counterset.explain.KindWords;
import counterset.explain.ScoreWords;
import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Exercise;
import counterset.model.PlanScore;
import counterset.model.Superset;
import counterset.report.SwapChoice;
import counterset.report.SwapList;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What could stand at a place instead, as a table with reasons. */
public final class SwapTable {

  private static final int MOST_REASONS = 3;
  private static final String HANG = " ".repeat(13);

  private final Page page;
  private final SwapList list;
  private final Catalogue catalogue;

  private SwapTable(Page page, SwapList list, Catalogue catalogue) {
    this.page = page;
    this.list = list;
    this.catalogue = catalogue;
  }

  /** Lines of at most 100 columns. */
  public static String of(SwapList list, Catalogue catalogue, boolean colour) {
    Page page = new Page(colour);
    SwapTable table = new SwapTable(page, list, catalogue);
    table.head();
    table.choices();
    table.breaking();
    return page.text();
  }

  private void head() {
    Superset superset = list.plan().session().supersets().get(list.at().superset() - 1);
    page.strong(
        "", list.at() + ": " + list.standing().map(Exercise::name).orElse("nothing stands here"));
    page.plain(
        "",
        "Superset "
            + superset.number()
            + ": "
            + superset.distinct().stream().map(Exercise::name).collect(Collectors.joining("  +  "))
            + (superset.isUnilateral() ? ", left then right" : ""));
    page.plain("", English.capital(new KindWords(catalogue).heading(superset)));
    page.plain("", "The plan: " + score(list.plan().score()));
  }

  private static String score(PlanScore score) {
    return ScoreWords.sentence(score.hard(), score.medium(), score.soft());
  }

  private void choices() {
    page.blank();
    if (list.choices().isEmpty()) {
      page.strong("", "NO REPLACEMENT keeps every rule");
      return;
    }
    page.strong(
        "",
        "REPLACEMENTS  points gained or lost in the whole session; --take 1 puts the first one in");
    boolean allMet = true;
    for (SwapChoice choice : list.choices()) {
      if (allMet && choice.score().medium() < list.plan().score().medium()) {
        allMet = false;
        page.plain(HANG, "These leave a wish unmet that the plan meets:");
      }
      String lead =
          String.format(
              Locale.ROOT,
              "%4d  %5s  ",
              choice.number().orElseThrow(),
              ScoreWords.points(points(choice)));
      choice(lead, choice);
    }
    more(list.choicesInAll() - list.choices().size(), "more");
  }

  private int points(SwapChoice choice) {
    return choice.score().soft() - list.plan().score().soft();
  }

  private void choice(String lead, SwapChoice choice) {
    page.strong(lead, choice.exercise().name() + sides(choice));
    if (!choice.follows().isEmpty()) {
      page.plain(HANG, "Follows: " + String.join("; ", choice.follows()) + ".");
    }
    page.plain(HANG, reasons(choice.differences()));
  }

  private static String sides(SwapChoice choice) {
    boolean both = choice.places().size() == 2 && choice.partner().isEmpty();
    return both ? ", left then right" : "";
  }

  private static String reasons(List<Difference> differences) {
    if (differences.isEmpty()) {
      return "No difference in points.";
    }
    List<String> sentences = new ArrayList<>();
    differences.stream().limit(MOST_REASONS).map(DifferenceWords::line).forEach(sentences::add);
    int rest =
        differences.stream()
            .skip(MOST_REASONS)
            .filter(difference -> difference.level().equals("soft"))
            .mapToInt(Difference::points)
            .sum();
    if (rest != 0) {
      sentences.add("The rest: " + ScoreWords.points(rest));
    }
    return sentences.stream().map(sentence -> sentence + ".").collect(Collectors.joining(" "));
  }

  private void breaking() {
    if (list.breaking().isEmpty()) {
      return;
    }
    page.blank();
    page.strong("", "WOULD BREAK A RULE");
    for (SwapChoice choice : list.breaking()) {
      String rules =
          choice.differences().stream()
              .filter(difference -> difference.level().equals("hard") && difference.points() < 0)
              .map(difference -> difference.sentence() + ".")
              .collect(Collectors.joining(" "));
      page.plain(HANG, choice.exercise().name() + ": " + rules);
    }
    more(list.breakingInAll() - list.breaking().size(), "more that would");
  }

  private void more(int number, String what) {
    if (number > 0) {
      page.faint(HANG, number + " " + what + ": --all shows them");
    }
  }
}
