package counterset.problem;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.json.InvalidInputException;
import counterset.json.Json;
import counterset.json.JsonDocument;
import counterset.json.Schemas;
import counterset.model.Problem;
import counterset.model.Target;
import counterset.model.WeekProblem;
import counterset.model.WeekProblem.SetRange;
import counterset.model.WeekSession;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class WeekReaderTest {

  private static final WeekReader WEEKS =
      new WeekReader(Fixture.PROBLEMS, Fixture.CATALOGUE, Set.of("recoveryShort"));

  private static final String GOOD =
      """
      {"week": 1, "title": "Four days",
       "shared": {"minutes": 20, "equipment": [{"id": "dumbbell", "count": 2}], "seed": 4},
       "sessions": [
         {"day": "thursday", "targets": ["lower"], "minutes": 30},
         {"day": "monday", "targets": ["chest"], "equipment": []}],
       "earlier": [{"daysBeforeMonday": 2, "exercises": ["goblet-squat"],
                    "directSets": {"quadriceps": 3}}],
       "setRanges": {"chest": {"least": 2, "most": 8}},
       "recoveryIsRule": true,
       "weights": {"recoveryShort": 9}}
      """;

  private static WeekProblem read(String text) {
    return WEEKS.read(JsonDocument.parse("w.json", text), "");
  }

  private static List<String> faults(String text) {
    try {
      read(text);
      return List.of();
    } catch (InvalidInputException e) {
      return e.violations().stream().map(Object::toString).toList();
    }
  }

  @Test
  void aSessionTakesFromWhatIsSharedWhatItDoesNotSayItself() {
    WeekProblem week = read(GOOD);
    assertThat(week.sessions())
        .extracting(WeekSession::day)
        .containsExactly(DayOfWeek.MONDAY, DayOfWeek.THURSDAY);
    Problem monday = week.sessions().get(0).problem();
    Problem thursday = week.sessions().get(1).problem();
    assertThat(monday.minutes()).isEqualTo(20);
    assertThat(monday.equipment()).isEmpty();
    assertThat(monday.targets()).extracting(Target::muscle).containsExactly("chest");
    assertThat(thursday.minutes()).isEqualTo(30);
    assertThat(thursday.equipment()).hasSize(1);
    assertThat(List.of(monday.seed(), thursday.seed(), week.seed())).containsOnly(4L);
    assertThat(week.setRanges()).containsEntry("chest", new SetRange(2, 8));
    assertThat(week.earlier().get(0).directSets()).containsEntry("quadriceps", 3);
    assertThat(week.recoveryIsRule()).isTrue();
    assertThat(week.weights()).containsEntry("recoveryShort", 9);
  }

  @Test
  void whatIsWrittenReadsAsTheSameWeek() {
    WeekProblem week = read(GOOD);
    JsonDocument written = JsonDocument.parse("again", Json.pretty(WeekJson.write(week)));
    assertThat(Schemas.validate(written, "week")).isEmpty();
    assertThat(WEEKS.read(written, "")).isEqualTo(week);
  }

  @Test
  void defaults() {
    WeekProblem week =
        read(
            "{\"week\": 1, \"sessions\": [{\"day\": \"sunday\", \"minutes\": 5, \"targets\":"
                + " [\"lower\"]}]}");
    assertThat(week.title()).isEqualTo("Week");
    assertThat(week.seed()).isEqualTo(1);
    assertThat(week.earlier()).isEmpty();
    assertThat(week.recoveryIsRule()).isFalse();
  }

  @Test
  void allFaultsAtOnceWhereTheyStand() {
    assertThat(
            faults(
                """
                {"week": 1,
                 "shared": {"minutes": 20, "limitations": ["sore-kneees"],
                            "levle": 2},
                 "sessions": [
                   {"day": "monday", "targets": ["lowr"]},
                   {"day": "mnday", "targets": ["lower"]},
                   {"day": "monday", "targets": ["lower"], "exclude": ["goblet-squat"],
                    "include": ["goblet-squat"]},
                   {"day": "friday", "minuets": 3}],
                 "earlier": [{"daysBeforeMonday": 1, "exercises": ["goblet-sqat"]},
                             {"daysBeforeMonday": 3, "exercises": []}],
                 "setRanges": {"chst": {"least": 2, "most": 8},
                               "chest": {"least": 9, "most": 8}},
                 "weights": {"recoveryShrt": 9},
                 "recovryIsRule": true}
                """))
        .containsExactly(
            "w.json:2 /shared/limitations/0: The limitation (sore-kneees) is not known. Maybe"
                + " \"sore-knees\"?",
            "w.json:3 /shared/levle: The property (levle) is not known here. Maybe \"level\"?",
            "w.json:5 /sessions/0/targets/0: The muscle (lowr) is not known. Maybe \"lower\"?",
            "w.json:6 /sessions/1/day: The day (mnday) must be one of monday, tuesday, wednesday,"
                + " thursday, friday, saturday, sunday. Maybe \"monday\"?",
            "w.json:7 /sessions/2/day: The day (monday) has a session already; a day has at most"
                + " one.",
            "w.json:8 /sessions/2/include/0: The exercise (goblet-squat) is excluded as well"
                + " (goblet-squat); it cannot be both, drop one.",
            "w.json:9 /sessions/3/targets: The property (targets) is missing.",
            "w.json:9 /sessions/3/minuets: The property (minuets) is not known here. Maybe"
                + " \"minutes\"?",
            "w.json:10 /earlier/0/exercises/0: The exercise (goblet-sqat) is not known. Maybe"
                + " \"goblet-squat\"?",
            "w.json:11 /earlier/1/daysBeforeMonday: The daysBeforeMonday (3) must not grow: the"
                + " latest comes last.",
            "w.json:12 /setRanges/chst: The muscle (chst) is not known. Maybe \"chest\"?",
            "w.json:13 /setRanges/chest/most: The most (8) must not be below the least (9); swap"
                + " them or raise it.",
            "w.json:14 /weights/recoveryShrt: The constraint of a week (recoveryShrt) is not known."
                + " Maybe \"recoveryShort\"?",
            "w.json:15 /recovryIsRule: The property (recovryIsRule) is not known here. Maybe"
                + " \"recoveryIsRule\"?");
  }

  @Test
  void otherShapes() {
    assertThat(faults("[]")).singleElement().asString().contains("object in braces");
    assertThat(faults("{\"week\": 1}"))
        .containsExactly("w.json:1 /sessions: The property (sessions) is missing.");
    assertThat(faults("{\"week\": 2, \"sessions\": [5]}")).hasSize(2);
    assertThat(faults("{\"week\": 1, \"sessions\": []}")).hasSize(1);
    assertThat(faults("{\"week\": 1, \"shared\": 5, \"sessions\": [{\"day\": \"monday\"}]}"))
        .anyMatch(line -> line.contains("/shared: "))
        .anyMatch(line -> line.contains("/sessions/0/minutes: The property (minutes) is missing."));
  }
}
