package counterset.training;

import counterset.journal.Entry;
import counterset.journal.ExerciseSets;
import counterset.journal.MuscleSets;
import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.WeekPlan;
import counterset.model.WeekProblem;
import counterset.model.WeekProblem.EarlierSession;
import counterset.model.WeekSession;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was done before a week.
 *
 * @param entries of the journal that are before its Monday, by date
 * @param monday of the week, if a day or a journal tells
 */
public record WeekPast(List<Entry> entries, Optional<LocalDate> monday) {

  /** Nothing looks back further than this. */
  private static final int LOOK_BACK_DAYS = 28;

  /**
   * What was done before the week of a day.
   *
   * @param all entries of a journal, by date
   * @param day of the week; without it, the week is the one after the last session done
   */
  public static WeekPast of(List<Entry> all, Optional<LocalDate> day) {
    Optional<LocalDate> monday =
        day.map(WeekPast::mondayOf)
            .or(
                () ->
                    all.stream()
                        .map(Entry::date)
                        .reduce((a, b) -> b)
                        .map(last -> last.with(TemporalAdjusters.next(DayOfWeek.MONDAY))));
    return new WeekPast(
        all.stream().filter(e -> monday.isPresent() && e.date().isBefore(monday.get())).toList(),
        monday);
  }

  /** The Monday of the week of a day. */
  public static LocalDate mondayOf(LocalDate day) {
    return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }

  /** The week with what was done lately. */
  public WeekProblem before(WeekProblem week, Catalogue catalogue) {
    if (monday.isEmpty()) {
      return week;
    }
    List<EarlierSession> earlier = new ArrayList<>(week.earlier());
    List<Entry> late =
        entries.stream()
            .filter(e -> !e.date().plusDays(LOOK_BACK_DAYS).isBefore(monday.get()))
            .map(entry -> known(entry, catalogue))
            .toList();
    late.forEach(entry -> earlier.add(earlier(entry, catalogue)));
    earlier.sort((a, b) -> Integer.compare(b.daysBeforeMonday(), a.daysBeforeMonday()));
    return week.after(earlier)
        .withSessions(
            week.sessions().stream()
                .map(
                    it ->
                        new WeekSession(
                            it.day(),
                            new Past(late, Optional.of(date(it)), false).before(it.problem())))
                .toList());
  }

  private LocalDate date(WeekSession session) {
    return monday.orElseThrow().plusDays(session.day().getValue() - 1L);
  }

  /** A catalogue of today may not have any more what was done once. */
  private static Entry known(Entry entry, Catalogue catalogue) {
    return entry.toBuilder()
        .exercises(
            entry.exercises().stream()
                .filter(it -> catalogue.exercises().containsKey(it.exercise()))
                .toList())
        .build();
  }

  private EarlierSession earlier(Entry entry, Catalogue catalogue) {
    Map<String, Integer> sets = new LinkedHashMap<>();
    for (MuscleSets muscle : entry.muscles()) {
      if (muscle.direct() > 0 && catalogue.muscles().containsKey(muscle.muscle())) {
        sets.put(muscle.muscle(), muscle.direct());
      }
    }
    return new EarlierSession(
        (int) ChronoUnit.DAYS.between(entry.date(), monday.orElseThrow()),
        entry.exercises().stream().map(ExerciseSets::exercise).distinct().toList(),
        sets);
  }

  /** Advice on loads by session; none if no journal was read. */
  public List<List<LoadAdvice>> loads(WeekPlan week) {
    List<List<LoadAdvice>> loads = new ArrayList<>();
    for (int i = 0; i < week.plans().size() && !entries.isEmpty(); i++) {
      Plan plan = week.plans().get(i);
      LocalDate day = date(week.problem().sessions().get(i));
      loads.add(new Past(entries, Optional.of(day), true).loads(plan));
    }
    return loads;
  }
}
