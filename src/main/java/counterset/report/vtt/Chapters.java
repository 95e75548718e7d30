package counterset.report.vtt;

import counterset.explain.BlockWords;
import counterset.model.English;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.Plan;
import counterset.model.Superset;
import counterset.report.Times;
import java.util.ArrayList;
import java.util.List;

/** The parts of a session as chapters of a recording: one a superset, with its rest. */
public final class Chapters {

  private Chapters() {}

  /** The text of a {@code .vtt} file for a track of chapters. */
  public static String of(Plan plan) {
    StringBuilder file = new StringBuilder("WEBVTT\n\n");
    int number = 1;
    for (Cue cue : cues(plan)) {
      file.append(cue.block(number++)).append("\n");
    }
    return file.toString();
  }

  /** A line a chapter, as the description of a recording has it: {@code 2:40 Superset 1: ...}. */
  static String list(Plan plan) {
    StringBuilder list = new StringBuilder("Chapters\n");
    for (Cue cue : cues(plan)) {
      list.append(Times.clock((int) (cue.start() / 1000)))
          .append(' ')
          .append(Cue.escaped(cue.text()))
          .append('\n');
    }
    return list.toString();
  }

  private static List<Cue> cues(Plan plan) {
    List<Cue> cues = new ArrayList<>();
    String title = null;
    int start = 0;
    for (Interval interval : plan.timeline()) {
      String own = title(plan, interval, title);
      if (title != null && !own.equals(title)) {
        cues.add(new Cue(start * 1000L, interval.start() * 1000L, title));
        start = interval.start();
      }
      title = own;
    }
    if (title != null) {
      cues.add(new Cue(start * 1000L, plan.totals().seconds() * 1000L, title));
    }
    return cues;
  }

  /** A rest belongs to what went before it. */
  private static String title(Plan plan, Interval interval, String before) {
    return switch (interval.kind()) {
      case GET_READY -> "Get ready";
      case WARM_UP -> "Warm-up";
      case COOL_DOWN -> "Cool-down";
      case WORK -> superset(plan, interval.at().orElseThrow().superset());
      case SWITCH, REST -> before == null ? "Rest" : before;
    };
  }

  private static String superset(Plan plan, int number) {
    List<String> names =
        plan.session().supersets().stream()
            .filter(superset -> superset.number() == number)
            .map(Superset::distinct)
            .flatMap(List::stream)
            .map(Exercise::name)
            .toList();
    return English.capital(BlockWords.name(plan)) + " " + number + ": " + English.list(names);
  }
}
