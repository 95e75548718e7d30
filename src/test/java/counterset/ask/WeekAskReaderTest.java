package counterset.ask;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Problem;
import counterset.model.Target;
import counterset.model.WeekProblem;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeekAskReaderTest {

  private static final WeekAskReader READER = new WeekAskReader(AskFixture.CATALOGUE);

  /** Day by day: minutes, regions that are wholly targets or muscles, equipment. */
  private static String text(WeekProblem week) {
    return week.sessions().stream()
        .map(session -> DayNames.of(session.day()).substring(0, 3) + " " + text(session.problem()))
        .collect(Collectors.joining("; "));
  }

  private static String text(Problem problem) {
    List<String> targets = problem.targets().stream().map(Target::muscle).toList();
    List<String> lower = MuscleNames.defaults(AskFixture.CATALOGUE, "lower");
    List<String> upper = MuscleNames.defaults(AskFixture.CATALOGUE, "upper");
    List<String> whole = MuscleNames.defaults(AskFixture.CATALOGUE, OwnWords.WHOLE);
    String name =
        targets.equals(lower)
            ? "lower"
            : targets.equals(upper)
                ? "upper"
                : targets.equals(whole) ? "whole" : String.join("+", targets);
    return problem.minutes() + " " + name + " " + problem.equipment().size();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          4 sessions, Mon Tue Thu Sat, 20 min, lower Mon and Thu, upper Tue, whole body Sat, dumbbells | Mon 20 lower 1; Tue 20 upper 1; Thu 20 lower 1; Sat 20 whole 1
          lower Mon and Thu, upper Tue, dumbbells   | Mon 20 lower 1; Tue 20 upper 1; Thu 20 lower 1
          lower Mon, Thu, upper Tue                 | Mon 20 lower 0; Tue 20 upper 0; Thu 20 lower 0
          Mon: lower, Tue: upper; 15 min            | Mon 15 lower 0; Tue 15 upper 0
          Mondays and Thursdays lower, Tuesdays upper | Mon 20 lower 0; Tue 20 upper 0; Thu 20 lower 0
          lower Mon upper Tue                       | Mon 20 lower 0; Tue 20 upper 0
          lower on Mon and upper on Tue             | Mon 20 lower 0; Tue 20 upper 0
          4 sessions                                | Mon 20 whole 0; Tue 20 whole 0; Thu 20 whole 0; Sat 20 whole 0
          three times a week, legs, 25 min          | Mon 25 lower 0; Wed 25 lower 0; Fri 25 lower 0
          twice a week, 30 min each                 | Mon 30 whole 0; Thu 30 whole 0
          a week of 2 sessions, legs                | Mon 20 lower 0; Thu 20 lower 0
          weekdays, legs                            | Mon 20 lower 0; Tue 20 lower 0; Wed 20 lower 0; Thu 20 lower 0; Fri 20 lower 0
          Fri-Sun, legs                             | Fri 20 lower 0; Sat 20 lower 0; Sun 20 lower 0
          Fri - Sun, legs                           | Fri 20 lower 0; Sat 20 lower 0; Sun 20 lower 0
          Sat to Mon, legs                          | Mon 20 lower 0; Sat 20 lower 0; Sun 20 lower 0
          weds, thurs, legs                         | Wed 20 lower 0; Thu 20 lower 0
          20 min Mon Sat dumbbells, 30 min Sat      | Mon 20 whole 1; Sat 30 whole 1
          20 min, 30 min Sat; Mon, lower Mon        | Mon 20 lower 0; Sat 30 whole 0
          Mon Sat, legs, calves Sat                 | Mon 20 lower 0; Sat 20 calves 0
          Mon Wed, dumbbells Wed, legs              | Mon 20 lower 0; Wed 20 lower 1
          every day, 10 min                         | Mon 10 whole 0; Tue 10 whole 0; Wed 10 whole 0; Thu 10 whole 0; Fri 10 whole 0; Sat 10 whole 0; Sun 10 whole 0
          """)
  void daysAndWhatTheyBind(String ask, String expected) {
    WeekAskReading reading = READER.read(ask);
    assertThat(reading.faults()).as(ask).isEmpty();
    assertThat(text(reading.problem().orElseThrow())).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          legs                          | 1: -> No day is named
          5 sessions, Mon Tue, legs     | 1:5 sessions -> Here are 2 days (Monday, Tuesday), not 5
          8 sessions                    | 1:8 sessions -> from 1 to 7 sessions
          0 sessions                    | 1:0 sessions -> from 1 to 7 sessions
          3 sessions, 4 sessions        | 13:4 sessions -> Two different numbers of sessions
          4 weeks, 3 sessions           | 1:4 weeks -> --weeks 4
          Munday, Tue, legs             | 1:Munday -> maybe "monday"
          Mon, Tue, legz                | 11:legz -> Not understood
          Mon, dumbels Tue              | 6:dumbels -> maybe "dumbbells"
          Mon legs Tue                  | 1:Mon legs Tue -> not clear which day has what
          20 min Mon, 30 min Mon        | 13:30 min -> Two different durations
          Mon Tue, 72 h recovery as a rule | 10:72 h recovery as a rule -> counted as 48 hours
          Mon Tue, 48 h recovery        | 10:48 h recovery -> are a wish anyway
          Mon, purple, Tue: bananas     | 6:purple -> Not understood $ 19:bananas -> Not understood
          """)
  void faults(String ask, String expected) {
    WeekAskReading reading = READER.read(ask);
    String all = reading.faults().toString();
    String[] wanted = expected.split(" \\$ ");
    assertThat(reading.problem()).as(ask).isEmpty();
    assertThat(reading.faults()).as(all).hasSize(wanted.length);
    for (int i = 0; i < wanted.length; i++) {
      AskFault fault = reading.faults().get(i);
      String[] parts = wanted[i].split(" -> ");
      assertThat(fault.column() + ":" + fault.phrase()).as(all).isEqualTo(parts[0].strip());
      assertThat(fault.message()).as(all).contains(parts[1].strip());
    }
  }

  @Test
  void theEchoTellsWhatHoldsForAllDaysAndThenEachDay() {
    WeekAskReading reading =
        READER.read("lower Mon, upper Thu, dumbbells, 48 h recovery as a rule, seed 3");
    assertThat(reading.echo())
        .startsWith(
            "2 sessions: Monday, Thursday",
            "48 h of recovery between sessions of a muscle group: a rule",
            "20 minutes (assumed)")
        .contains("seed 3")
        .anyMatch(line -> line.startsWith("Monday: targets: quadriceps"))
        .anyMatch(line -> line.startsWith("Thursday: targets: chest"))
        .doesNotHaveDuplicates();
    WeekProblem week = reading.problem().orElseThrow();
    assertThat(week.recoveryIsRule()).isTrue();
    assertThat(week.seed()).isEqualTo(3);
    assertThat(week.sessions())
        .extracting(it -> it.problem().title())
        .containsExactly("Monday: lower", "Thursday: upper");
  }

  @Test
  void assumedDaysAreSaidToBe() {
    assertThat(READER.read("3 sessions").echo().get(0))
        .isEqualTo("3 sessions: Monday, Wednesday, Friday (assumed: spread evenly from Monday on)");
    assertThat(WeekAskReader.spread(7)).containsExactly(DayOfWeek.values());
    assertThat(WeekAskReader.spread(1)).containsExactly(DayOfWeek.MONDAY);
  }

  @Test
  void nothingAtAll() {
    for (String ask : List.of("", "  ", ",", "and")) {
      assertThat(READER.read(ask).faults()).as(ask).hasSize(1);
    }
    assertThat(READER.read("Mon ".repeat(300)).faults().get(0).message())
        .contains("1000 characters");
  }

  @Test
  void anythingAtAllIsReadOrRefused() {
    String[] bits = {
      "Mon",
      "Tue-Thu",
      "and",
      ",",
      ":",
      ";",
      "-",
      "4 sessions",
      "lower",
      "upper",
      "20 min",
      "each",
      "a week",
      "48 h",
      "recovery",
      "as a rule",
      "weekdays",
      "every day",
      "on",
      "/",
      "class with",
      "sore knees",
      "x",
      "7",
      "weeks",
      "\ud83d\ude00",
      "\u0007",
      "30 min Sat",
      "to",
      "twice",
      "level 2"
    };
    for (int seed = 0; seed < 3000; seed++) {
      Random random = new Random(seed);
      StringBuilder ask = new StringBuilder();
      for (int i = random.nextInt(9); i >= 0; i--) {
        ask.append(bits[random.nextInt(bits.length)]).append(random.nextInt(5) == 0 ? "" : " ");
      }
      WeekAskReading reading = READER.read(ask.toString());
      assertThat(reading.problem().isPresent())
          .as("seed %d: %s", seed, ask)
          .isEqualTo(reading.faults().isEmpty());
      reading.problem().ifPresent(week -> assertThat(week.sessions()).hasSizeBetween(1, 7));
      assertThat(READER.read(ask.toString())).isEqualTo(reading);
    }
  }
}
