package counterset.report.ics;

import counterset.model.Plan;
import counterset.model.WeekPlan;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.temporal.Temporal;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Duration;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;

/**
 * Sessions as calendar entries.
 *
 * <p>Times are floating: a session at 18:30 is at 18:30 wherever it is read. A session planned
 * again for the same day under the same title keeps its UID, so that a calendar replaces the entry.
 */
public final class CalendarFile {

  private static final String PRODUCT = "-//Counterset//Counterset//EN";
  private static final boolean VALIDATING = true;

  private CalendarFile() {}

  /**
   * One session.
   *
   * @param start when it begins; an entry without it takes the whole day
   */
  public static String of(Plan plan, LocalDate day, Optional<LocalTime> start) {
    Calendar calendar = empty();
    calendar.add(entry(plan, plan.problem().title(), day, start));
    return text(calendar);
  }

  /**
   * The sessions of weeks that follow each other.
   *
   * @param monday of the first week
   */
  public static String of(List<WeekPlan> weeks, LocalDate monday, Optional<LocalTime> start) {
    Calendar calendar = empty();
    for (int i = 0; i < weeks.size(); i++) {
      WeekPlan week = weeks.get(i);
      for (int j = 0; j < week.plans().size(); j++) {
        DayOfWeek day = week.problem().sessions().get(j).day();
        LocalDate date = monday.plusWeeks(i).with(TemporalAdjusters.nextOrSame(day));
        calendar.add(entry(week.plans().get(j), week.problem().title(), date, start));
      }
    }
    return text(calendar);
  }

  private static Calendar empty() {
    Calendar calendar = new Calendar();
    calendar.add(new ProdId(PRODUCT));
    calendar.add(ImmutableVersion.VERSION_2_0);
    return calendar;
  }

  private static VEvent entry(Plan plan, String of, LocalDate day, Optional<LocalTime> start) {
    VEvent entry = new VEvent(false);
    entry.add(new Uid(uid(of, day)));
    // Required, and the time of writing may not be in a file that is the same every time.
    entry.add(new DtStamp(day.atStartOfDay().toInstant(ZoneOffset.UTC)));
    Temporal begin = start.<Temporal>map(day::atTime).orElse(day);
    entry.add(new DtStart<>(begin));
    entry.add(
        new Duration(
            start.isPresent()
                ? java.time.Duration.ofSeconds(plan.totals().seconds())
                : java.time.Period.ofDays(1)));
    entry.add(new Summary(plan.problem().title()));
    entry.add(new Description(SessionWords.of(plan)));
    return entry;
  }

  private static String uid(String title, LocalDate day) {
    String name = "counterset:" + day + ":" + title;
    return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)).toString();
  }

  private static String text(Calendar calendar) {
    StringWriter text = new StringWriter();
    try {
      new CalendarOutputter(VALIDATING).output(calendar, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }
}
