package counterset.training;

import counterset.journal.Entry;
import counterset.journal.ExerciseSets;
import counterset.json.BadRequest;
import counterset.model.Done;
import counterset.model.Plan;
import counterset.model.Problem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was done before a session.
 *
 * @param entries of the journal, by date
 * @param day the day of the session, if it is known
 * @param logged whether a journal was read
 */
public record Past(List<Entry> entries, Optional<LocalDate> day, boolean logged) {

  /** Nothing looks back further than this; a plan that echoes years of entries is of no use. */
  private static final int LOOK_BACK_DAYS = 28;

  /** The entries after the day of the session. */
  public int later() {
    return entries.size() - earlier().size();
  }

  /**
   * The problem with what was done lately.
   *
   * @throws BadRequest if the problem itself knows of sessions after the day asked for
   */
  public Problem before(Problem problem) {
    Optional<Done> after =
        problem.recent().stream()
            .filter(done -> day.isPresent() && done.date().isAfter(day.get()))
            .findFirst();
    if (after.isPresent()) {
      throw new BadRequest(
          "--date ("
              + day.orElseThrow()
              + ") is before a session that the problem has in its recent ("
              + after.get().date()
              + "). Maybe name a later day.");
    }
    List<Done> done = new ArrayList<>(problem.recent());
    Optional<LocalDate> today = today();
    today.ifPresent(
        date -> earlier().stream().filter(e -> isLate(e, date)).forEach(e -> done.add(done(e))));
    return problem.after(done, day);
  }

  private static boolean isLate(Entry entry, LocalDate today) {
    return entry.date().plusDays(LOOK_BACK_DAYS).isAfter(today);
  }

  private static Done done(Entry entry) {
    return new Done(
        entry.date(), entry.exercises().stream().map(ExerciseSets::exercise).distinct().toList());
  }

  /** Advice on every exercise of a plan that is done with a load; none if no journal was read. */
  public List<LoadAdvice> loads(Plan plan) {
    if (!logged) {
      return List.of();
    }
    LoadAdviser adviser =
        new LoadAdviser(earlier(), plan.problem().equipment(), today().orElse(LocalDate.EPOCH));
    return plan.session()
        .work()
        .distinct()
        .filter(LoadAdviser::isLoaded)
        .map(adviser::advise)
        .toList();
  }

  private List<Entry> earlier() {
    return entries.stream()
        .filter(entry -> day.isEmpty() || !entry.date().isAfter(day.get()))
        .toList();
  }

  /** The day of the session, or the one after the last that was done. */
  private Optional<LocalDate> today() {
    return day.or(
        () -> entries.stream().map(Entry::date).reduce((a, b) -> b).map(d -> d.plusDays(1)));
  }
}
