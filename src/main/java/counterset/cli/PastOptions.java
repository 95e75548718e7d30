package counterset.cli;

import counterset.journal.Entry;
import counterset.journal.Journal;
import counterset.journal.Reading;
import counterset.model.Problem;
import counterset.training.Past;
import counterset.training.WeekPast;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What a plan takes from a journal. */
final class PastOptions {

  @Option(
      names = "--log",
      paramLabel = "FILE",
      description = "Keep away from what this journal says was done lately, and advise on loads.")
  String log;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description =
          "The day of the session, such as 2026-03-02; without it, the day after the last one done.")
  String date;

  /** What is wrong with the options. */
  List<String> faults() {
    List<String> faults = new ArrayList<>();
    day(faults);
    return faults;
  }

  /**
   * Reads the journal, if one is named.
   *
   * @param problem what is asked for, which may have a day of its own
   */
  Past read(Shell shell, Problem problem) {
    Optional<LocalDate> day = day().or(problem::date);
    if (log == null) {
      return new Past(List.of(), day, false);
    }
    Past past = new Past(entries(shell), day, true);
    int later = past.later();
    if (later > 0) {
      shell.say(log + ": entries after " + day.orElseThrow() + " are left out: " + later + ".");
    }
    return past;
  }

  /**
   * Reads the journal, if one is named. The week is that of the day named, or the one after the
   * last session done.
   */
  WeekPast readWeek(Shell shell) {
    List<Entry> all = entries(shell);
    WeekPast past = WeekPast.of(all, day());
    int later = all.size() - past.entries().size();
    if (later > 0) {
      shell.say(
          log
              + ": entries from "
              + past.monday().orElseThrow()
              + " on, the Monday of the week, are left out: "
              + later
              + ".");
    }
    return past;
  }

  /** The entries of the journal, by date; none if none is named. */
  private List<Entry> entries(Shell shell) {
    if (log == null) {
      return List.of();
    }
    Reading reading = new Journal(shell.path(log)).read();
    LeftOut.say(shell, log, reading);
    return reading.entries();
  }

  /** The day that is named, if the options have no fault. */
  Optional<LocalDate> day() {
    return day(new ArrayList<>());
  }

  private Optional<LocalDate> day(List<String> faults) {
    return new Fields(faults).date(date);
  }
}
