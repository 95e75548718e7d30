package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import counterset.json.JsonDocument;
import counterset.json.Schemas;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WeekCommandTest {

  private static final String ASK = "6 min, calves, quadriceps Mon, hamstrings Thu, dumbbells";

  @TempDir Path folder;

  private Cli week(String what, String... more) {
    List<String> args = new ArrayList<>(List.of("week", what, "--effort", "quick"));
    args.addAll(List.of(more));
    return Cli.run(folder, args.toArray(String[]::new));
  }

  private List<String> names(Path in) throws IOException {
    try (Stream<Path> files = Files.list(in)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private JsonNode json(String file) {
    return JsonDocument.parse(file, Cli.read(folder.resolve(file))).tree();
  }

  @Test
  void textIsTheReadingTheWeekAtAGlanceAndEverySession() {
    Cli week = week(ASK).succeeds();
    assertThat(week.out()).startsWith("Read as: 2 sessions: Monday, Thursday\n");
    assertThat(week.out())
        .contains(
            "Read as: Monday: targets: quadriceps\n", "Read as: Thursday: targets: hamstrings\n")
        .contains("\nTHE WEEK AT A GLANCE", "\nSCORE OF THE WEEK  all rules kept, ")
        .contains("\nMONDAY, session 1 of 2\n", "\nTHURSDAY, session 2 of 2\n")
        .contains("Iversen 2021", "Pelland 2024", "WHO 2020", "Garber 2011");
    assertThat(week.out().lines().filter(line -> !line.startsWith("Read as")))
        .allMatch(line -> line.length() <= 100);
  }

  @Test
  void jsonFitsItsSchemaAndRepeatsByteForByte() {
    Cli week = week(ASK, "--format", "json", "--write", "w.json").succeeds();
    assertThat(Schemas.validate(week.json(), "week-plan")).isEmpty();
    assertThat(Cli.read(folder.resolve("w.json"))).isEqualTo(week.out());
    assertThat(week(ASK, "--format", "json").out()).isEqualTo(week.out());
    assertThat(week.json().at("/sessions/1/day").textValue()).isEqualTo("thursday");
    int sessions = 0;
    for (JsonNode session : week.json().at("/sessions")) {
      assertThat(Schemas.validate(JsonDocument.of("s", session.get("plan")), "plan")).isEmpty();
      sessions += session.at("/plan/score/soft").intValue();
    }
    for (JsonNode line : week.json().at("/score/constraints")) {
      sessions += line.get("level").textValue().equals("soft") ? line.get("score").intValue() : 0;
    }
    assertThat(week.json().at("/score/soft").intValue()).isEqualTo(sessions);
    for (JsonNode sets : week.json().at("/sets")) {
      double sum = 0;
      for (JsonNode day : sets.get("byDay")) {
        sum += day.doubleValue();
      }
      assertThat(sets.get("sets").doubleValue()).isEqualTo(sum);
    }
  }

  @Test
  void theEchoedProblemIsAWeekFileThatGivesTheSameWeek() throws IOException {
    Cli asked = week(ASK, "--format", "json").succeeds();
    Files.writeString(
        folder.resolve("week.json"), counterset.json.Json.pretty(asked.json().at("/problem")));
    Cli read = week("week.json", "--format", "json").succeeds();
    assertThat(read.out()).isEqualTo(asked.out());
    assertThat(read.err()).isEmpty();
  }

  @Test
  void aFolderGetsThreeFilesASession() throws IOException {
    week(ASK, "--write", "days/", "--write", "whole.txt").succeeds();
    assertThat(names(folder.resolve("days")))
        .containsExactly(
            "monday.html",
            "monday.json",
            "monday.txt",
            "thursday.html",
            "thursday.json",
            "thursday.txt");
    Cli check = Cli.run(folder, "check", "days/monday.json").succeeds();
    assertThat(check.out()).startsWith("The session keeps every rule.");
    assertThat(Cli.read(folder.resolve("whole.txt")))
        .contains(Cli.read(folder.resolve("days/monday.txt")));
  }

  @Test
  void changingOneDayKeepsTheOthersByteForByte() throws IOException {
    week(ASK, "--write", "w.json").succeeds();
    String other =
        Cli.read(folder.resolve("w.json")).replaceFirst("\"minutes\": 6", "\"minutes\": 8");
    Cli.write(folder, "other.json", other);
    week("other.json", "--redo", "Mon", "--write", "new.json", "--format", "json").succeeds();
    JsonNode before = json("w.json");
    JsonNode after = json("new.json");
    assertThat(after.at("/sessions/1")).isEqualTo(before.at("/sessions/1"));
    assertThat(after.at("/sessions/0/plan/supersets").size())
        .isGreaterThan(before.at("/sessions/0/plan/supersets").size());
    assertThat(after.at("/problem/sessions/0/keep")).isEmpty();
    assertThat(Schemas.validate(JsonDocument.of("new", after), "week-plan")).isEmpty();
  }

  @Test
  void aDayThatStaysMustHaveBeenPlannedForWhatIsAskedOfIt() {
    week(ASK, "--write", "w.json").succeeds();
    Cli.write(
        folder,
        "other.json",
        Cli.read(folder.resolve("w.json")).replaceFirst("\"minutes\": 6", "\"minutes\": 8"));
    assertThat(week("other.json", "--redo", "thu").isRefused(1).err())
        .contains("/problem/sessions/0: Monday was planned for another problem");
    assertThat(week("w.json", "--redo", "sun,fridy").isRefused(1).err())
        .startsWith("--redo (fridy) is no day. Maybe \"Friday\"?");
    assertThat(week("w.json", "--redo", "sun").isRefused(1).err())
        .startsWith("--redo (Sunday) is no day of this week. Its days: Monday, Thursday.");
    assertThat(week("w.json").isRefused(1).err()).contains("--redo");
  }

  @Test
  void aBlockIsSeveralWeeksInOneObject() throws IOException {
    Cli block =
        week("Mon, 6 min, calves, dumbbells", "--weeks", "2", "--format", "json", "--write", "d/");
    assertThat(Schemas.validate(block.succeeds().json(), "block-plan")).isEmpty();
    assertThat(block.json().at("/weeks")).hasSize(2);
    assertThat(names(folder.resolve("d")))
        .containsExactly(
            "week-1-monday.html",
            "week-1-monday.json",
            "week-1-monday.txt",
            "week-2-monday.html",
            "week-2-monday.json",
            "week-2-monday.txt");
    assertThat(week("Mon, 6 min, calves, dumbbells", "--weeks", "2").succeeds().out())
        .contains("\nWEEK 1 OF 2\n", "\nWEEK 2 OF 2\n");
  }

  @Test
  void whatWasLoggedCountsAsBeforeTheWeek() {
    week(ASK, "--write", "d/").succeeds();
    for (String date : List.of("2026-02-27", "2026-03-03")) {
      Cli.run(
              folder,
              "log",
              "add",
              "d/monday.json",
              "--log",
              "a.jsonl",
              "--rpe",
              "6",
              "--date",
              date)
          .succeeds();
    }
    Cli week = week(ASK, "--log", "a.jsonl", "--date", "2026-03-04", "--format", "json").succeeds();
    assertThat(week.err()).contains("a.jsonl: entries from 2026-03-02 on, the Monday of the week");
    assertThat(week.json().at("/problem/earlier")).hasSize(1);
    assertThat(week.json().at("/problem/earlier/0/daysBeforeMonday").intValue()).isEqualTo(3);
    assertThat(week.json().at("/problem/sessions/1/date").textValue()).isEqualTo("2026-03-05");
    assertThat(week.json().at("/problem/sessions/1/recent/0/date").textValue())
        .isEqualTo("2026-02-27");
    assertThat(Schemas.validate(week.json(), "week-plan")).isEmpty();
  }

  @Test
  void anInfeasibleWeekSaysWhichDayAndWhy() throws IOException {
    Cli week = week("Mon Thu, calves, 6 min, 2 min Thu", "--write", "w.txt");
    assertThat(week.status()).isEqualTo(Exit.INFEASIBLE);
    assertThat(week.out()).isEmpty();
    assertThat(week.err())
        .contains("\nThursday:\nNo feasible session: ")
        .doesNotContain("\nMonday:\n");
    assertThat(names(folder)).isEmpty();
  }

  @Test
  void refusals() {
    assertThat(
            week(ASK, "--write", "w.pdf", "--weeks", "13", "--seconds", "0", "--date", "x")
                .isRefused(4)
                .err())
        .contains("--write (w.pdf)", "--weeks (13)", "--seconds (0)", "--date (x)");
    assertThat(week("no day", "--redo", "mon", "--weeks", "2", "--log", "x").isRefused(2).err())
        .contains("--weeks (2)", "--log");
    assertThat(week("Mon, purple, legz").isRefused(2).err())
        .contains("ask, column 6: ", "ask, column 14: ");
    Cli.write(folder, "p.json", "{\"problem\": 1, \"minutes\": 6, \"targets\": [\"calves\"]}");
    assertThat(week("p.json").isRefused(1).err()).contains("Maybe: counterset plan p.json");
    Cli.write(folder, "w.json", "{\"week\": 1, \"sessions\": [{\"day\": \"monday\"}]}");
    assertThat(week("w.json").isRefused(2).err())
        .contains("/sessions/0/minutes", "/sessions/0/targets");
  }
}
