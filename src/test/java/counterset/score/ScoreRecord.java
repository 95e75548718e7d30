package counterset.score;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.JsonDocument;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import counterset.model.Problem;
import counterset.model.WeekProblem;
import counterset.model.WeekProblem.EarlierSession;
import counterset.model.WeekProblem.SetRange;
import counterset.model.WeekSession;
import counterset.problem.ProblemReader;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;

/**
 * The score of sessions and weeks of all sorts, written down once, with all that it depends on: a
 * catalogue, problems that the cases name by their line from 0, and the cases.
 */
final class ScoreRecord {

  private record Asked(Problem problem, List<Exercise> exercises) {}

  private final Catalogue catalogue = FrozenCatalogue.read(lines("catalogue.json.gz").get(0));
  private final List<Asked> problems = new ArrayList<>();
  private final List<ScoreCase> cases = new ArrayList<>();

  private ScoreRecord() {
    ProblemReader reader = new ProblemReader(catalogue, Scorer.sessionConstraints());
    for (JsonNode line : lines("problems.jsonl.gz")) {
      withoutGoneWeights(line.get("problem"));
      Problem problem = reader.read(JsonDocument.of("problems", line), "/problem");
      JsonNode candidates = line.get("exercises");
      problems.add(
          new Asked(
              problem,
              candidates.isArray() ? exercises(candidates) : catalogue.exercises(Part.MAIN)));
    }
  }

  /** Weights of constraints that are no more say nothing. */
  private static void withoutGoneWeights(JsonNode problem) {
    if (problem.get("weights") instanceof ObjectNode weights) {
      weights.retain(Scorer.sessionConstraints());
    }
  }

  /** Reads it all. */
  static ScoreRecord read() {
    ScoreRecord record = new ScoreRecord();
    for (JsonNode line : lines("cases.jsonl.gz")) {
      record.cases.add(record.scoreCase(record.cases.size() + 1, line));
    }
    return record;
  }

  /** What all cases are of. */
  Catalogue catalogue() {
    return catalogue;
  }

  /** All cases in order. */
  List<ScoreCase> cases() {
    return cases;
  }

  private static List<JsonNode> lines(String file) {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                new GZIPInputStream(ScoreRecord.class.getResourceAsStream("/score/" + file)),
                StandardCharsets.UTF_8))) {
      return reader.lines().map(line -> JsonDocument.parse(file, line).tree()).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private ScoreCase scoreCase(int number, JsonNode line) {
    List<Filled> sessions = new ArrayList<>();
    line.get("sessions").forEach(session -> sessions.add(filled(session)));
    return new ScoreCase(
        number,
        Optional.ofNullable(line.get("week")).map(week -> week(week, sessions)),
        sessions,
        said(line.get("said")));
  }

  private Filled filled(JsonNode at) {
    Asked asked = problems.get(at.get("problem").intValue());
    List<Exercise> places = exercises(at.get("places"));
    List<List<Exercise>> standIns = new ArrayList<>();
    at.path("standIns").forEach(track -> standIns.add(exercises(track)));
    Set<Exercise> exercises = new LinkedHashSet<>(asked.exercises());
    Stream.concat(Stream.of(places), standIns.stream()).forEach(exercises::addAll);
    exercises.remove(null);
    return new Filled(asked.problem(), List.copyOf(exercises), places, standIns);
  }

  private List<Exercise> exercises(JsonNode ids) {
    List<Exercise> exercises = new ArrayList<>();
    ids.forEach(id -> exercises.add(id.isNull() ? null : exercise(id.textValue())));
    return exercises;
  }

  private Exercise exercise(String id) {
    return Optional.ofNullable(catalogue.exercises().get(id)).orElseThrow();
  }

  private static WeekProblem week(JsonNode at, List<Filled> sessions) {
    List<WeekSession> asked = new ArrayList<>();
    for (JsonNode day : at.get("days")) {
      asked.add(
          new WeekSession(
              DayOfWeek.valueOf(day.textValue()), sessions.get(asked.size()).problem()));
    }
    List<EarlierSession> earlier = new ArrayList<>();
    for (JsonNode before : at.get("earlier")) {
      List<String> ids = new ArrayList<>();
      before.get("exercises").forEach(id -> ids.add(id.textValue()));
      earlier.add(
          new EarlierSession(
              before.get("daysBeforeMonday").intValue(), ids, numbers(before.get("directSets"))));
    }
    Map<String, SetRange> ranges = new LinkedHashMap<>();
    at.get("setRanges")
        .properties()
        .forEach(
            range ->
                ranges.put(
                    range.getKey(),
                    new SetRange(
                        range.getValue().get(0).intValue(), range.getValue().get(1).intValue())));
    return new WeekProblem(
        "Week",
        asked,
        earlier,
        ranges,
        at.get("recoveryIsRule").booleanValue(),
        numbers(at.get("weights")),
        1);
  }

  private static Map<String, Integer> numbers(JsonNode at) {
    Map<String, Integer> numbers = new LinkedHashMap<>();
    at.properties().forEach(entry -> numbers.put(entry.getKey(), entry.getValue().intValue()));
    return numbers;
  }

  private static Said said(JsonNode at) {
    JsonNode score = at.get("score");
    TreeMap<String, Tally> tallies = new TreeMap<>();
    at.get("tallies")
        .properties()
        .forEach(
            tally ->
                tallies.put(
                    tally.getKey(),
                    new Tally(
                        tally.getValue().get(0).intValue(),
                        tally.getValue().get(1).intValue(),
                        tally.getValue().get(2).intValue())));
    return new Said(
        score.get(0).intValue(), score.get(1).intValue(), score.get(2).intValue(), tallies);
  }
}
