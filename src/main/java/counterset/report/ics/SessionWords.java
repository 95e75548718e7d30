package counterset.report.ics;

import counterset.explain.BlockWords;
import counterset.explain.FetchLine;
import counterset.model.English;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.Superset;
import counterset.report.Times;
import java.util.ArrayList;
import java.util.List;

/** A session in a few lines, for the description of a calendar entry. */
final class SessionWords {

  private SessionWords() {}

  static String of(Plan plan) {
    List<String> lines = new ArrayList<>();
    lines.add(
        Times.clock(plan.totals().seconds())
            + " minutes, "
            + English.count(plan.totals().supersets(), BlockWords.name(plan)));
    List<String> fetch = FetchLine.of(plan).stream().map(FetchLine::what).toList();
    lines.add("Have ready: " + (fetch.isEmpty() ? "nothing" : English.list(fetch)));
    lines.add("");
    for (Superset superset : plan.session().supersets()) {
      List<String> names = superset.distinct().stream().map(Exercise::name).toList();
      lines.add(
          superset.number()
              + ". "
              + (names.isEmpty() ? "not filled" : String.join(" + ", names))
              + (superset.isUnilateral() ? ", left then right" : ""));
    }
    lines.add("");
    lines.addAll(plan.cautions());
    return String.join("\n", lines);
  }
}
