package counterset.score;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.catalogue.Catalogues;
import counterset.fixture.Problems;
import counterset.fixture.RandomSessions;
import counterset.json.InvalidInputException;
import counterset.json.Json;
import counterset.json.JsonDocument;
import counterset.json.JsonFiles;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Done;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Joint;
import counterset.model.Keep;
import counterset.model.Load;
import counterset.model.Owned;
import counterset.model.Pairing;
import counterset.model.Part;
import counterset.model.Plan;
import counterset.model.Position;
import counterset.model.Problem;
import counterset.model.Target;
import counterset.model.WeekProblem;
import counterset.model.WeekProblem.EarlierSession;
import counterset.model.WeekProblem.SetRange;
import counterset.model.WeekSession;
import counterset.planning.Candidate;
import counterset.planning.Cast;
import counterset.planning.ExerciseFilter;
import counterset.planning.Ranking;
import counterset.planning.SessionFacts;
import counterset.planning.SessionSolution;
import counterset.planning.WeekFacts;
import counterset.planning.WeekSolution;
import counterset.planning.WeekSolutions;
import counterset.planning.scoring.SearchScoreCalculator;
import counterset.planning.scoring.WeekScoreCalculator;
import counterset.problem.ProblemJson;
import counterset.problem.ProblemReader;
import counterset.problem.WeekReader;
import counterset.solve.Effort;
import counterset.solve.Limit;
import counterset.solve.SessionPlanner;
import counterset.timeline.SessionLength;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;

/** Writes the record that {@link ScoreRecord} reads; leaves with the code that it records. */
public final class ScoreRecorder {

  private static final int PLAIN_PROBLEMS = 240;
  private static final int PLAIN_SESSIONS = 950;
  private static final int PLANNED_SESSIONS = 340;
  private static final int VARIED_PLANS = 24;
  private static final int CLASS_PROBLEMS = 80;
  private static final int CLASS_SESSIONS = 320;
  private static final int PLANNED_CLASSES = 24;
  private static final int WEEKS = 400;

  private final Catalogue catalogue = Catalogues.embedded();
  private final List<Exercise> main = catalogue.exercises(Part.MAIN);
  private final ProblemReader reader = new ProblemReader(catalogue, Scorer.sessionConstraints());
  private final Random random = new Random(20260301);
  private final List<Asked> problems = new ArrayList<>();
  private final List<JsonNode> cases = new ArrayList<>();
  private final Catalogue frozen;
  private final Scorer scorer;

  /** A problem of the record, its number there, and what may stand in its sessions. */
  private record Asked(int number, Problem problem, List<Exercise> exercises) {}

  /** A planned session by place. */
  private record Planned(Asked asked, List<Exercise> places) {}

  private ScoreRecorder() {
    frozen = FrozenCatalogue.read(JsonDocument.parse("", Json.line(catalogueJson())).tree());
    scorer = new Scorer(frozen);
  }

  /** Writes the files into a folder. */
  public static void main(String[] folder) throws IOException {
    ScoreRecorder recorder = new ScoreRecorder();
    recorder.record();
    Path to = Path.of(folder[0]);
    write(to.resolve("catalogue.json.gz"), List.of(recorder.catalogueJson()));
    write(
        to.resolve("problems.jsonl.gz"),
        recorder.problems.stream().map(recorder::problemJson).toList());
    write(to.resolve("cases.jsonl.gz"), recorder.cases);
  }

  private static void write(Path file, List<? extends JsonNode> lines) throws IOException {
    try (OutputStream out =
        new GZIPOutputStream(Files.newOutputStream(file)) {
          {
            def.setLevel(9);
          }
        }) {
      for (JsonNode line : lines) {
        out.write((Json.line(line) + "\n").getBytes(StandardCharsets.UTF_8));
      }
    }
  }

  private void record() throws IOException {
    List<Problem> shipped = shipped();
    List<Asked> plain = new ArrayList<>();
    while (plain.size() < PLAIN_PROBLEMS) {
      Problems drawn = new RandomSessions(catalogue, random.nextLong()).problem();
      Problem problem =
          plain.size() % 4 == 0
              ? varied(new Problems(any(shipped)).tracks(List.of()))
              : varied(drawn);
      ask(problem, random.nextInt(3) == 0).ifPresent(plain::add);
    }
    for (int i = 0; i < PLAIN_SESSIONS; i++) {
      Asked asked = plain.get(i % plain.size());
      add(Optional.empty(), List.of(filled(asked, draw(asked, pool(asked)))));
    }

    List<Planned> planned = new ArrayList<>();
    for (Problem problem : shipped) {
      planned.add(plan(ask(problem, false).orElseThrow()));
    }
    while (planned.size() < shipped.size() + VARIED_PLANS) {
      ask(varied(new Problems(any(shipped))), false).map(this::plan).ifPresent(planned::add);
    }
    planned.removeIf(plan -> plan.places().stream().allMatch(Objects::isNull));
    for (int i = 0; i < PLANNED_SESSIONS; i++) {
      Planned plan = planned.get(i % planned.size());
      add(Optional.empty(), List.of(nearly(plan)));
    }

    List<Asked> classes = new ArrayList<>();
    while (classes.size() < CLASS_PROBLEMS) {
      RandomSessions sessions = new RandomSessions(catalogue, random.nextLong());
      Problems base =
          classes.size() % 3 == 0
              ? new Problems(any(shipped))
              : new Problems(varied(sessions.problem()));
      ask(sessions.withTracks(base).problem(), false).ifPresent(classes::add);
    }
    List<Planned> plannedClasses = new ArrayList<>();
    for (Asked asked : classes.subList(0, PLANNED_CLASSES)) {
      plannedClasses.add(plan(asked));
    }
    plannedClasses.removeIf(plan -> plan.places().stream().allMatch(Objects::isNull));
    for (int i = 0; i < CLASS_SESSIONS; i++) {
      Asked asked = classes.get(i % classes.size());
      add(
          Optional.empty(),
          List.of(
              i % 3 == 0 ? nearly(any(plannedClasses)) : filled(asked, draw(asked, pool(asked)))));
    }

    List<Asked> all = new ArrayList<>(plain);
    all.addAll(classes);
    for (int i = 0; i < WEEKS; i++) {
      week(all, planned, i % 2 == 0);
    }
  }

  private List<Problem> shipped() throws IOException {
    List<Problem> shipped = new ArrayList<>();
    try (var files = Files.list(Path.of("problems"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
        JsonDocument document = JsonFiles.read(file);
        if (!WeekReader.isWeek(document)) {
          shipped.add(reader.read(document, ""));
        }
      }
    }
    return shipped;
  }

  // Problems

  /** The same with a few things otherwise. */
  private Problem varied(Problems problems) {
    Problem problem = problems.problem();
    Problems other = problems;
    if (chance(3)) {
      List<Target> targets = new ArrayList<>();
      for (Target target : problem.targets()) {
        if (!chance(6) || targets.isEmpty()) {
          targets.add(new Target(target.muscle(), 1 + random.nextInt(3), random.nextInt(4)));
        }
      }
      other = other.targets(targets.toArray(Target[]::new));
    }
    if (chance(3)) {
      int perSuperset = any(List.of(1, 2, 2, 2, 3));
      other =
          other
              .clock(
                  new Intervals(
                      10,
                      any(List.of(0, 60, 150)),
                      20 + random.nextInt(40),
                      any(List.of(0, 5, 10, 15)),
                      any(List.of(0, 10, 15, 30, 60)),
                      any(List.of(0, 60)),
                      perSuperset,
                      1 + random.nextInt(3)))
              .keeping(
                  problem.keep().stream()
                      .filter(keep -> keep.at().position() < perSuperset)
                      .toArray(Keep[]::new));
    }
    if (chance(3)) {
      other =
          other.owning(
              some(catalogue.equipment().keySet(), 6).stream()
                  .map(this::owned)
                  .toArray(Owned[]::new));
    }
    if (chance(4)) {
      other = other.limited(some(catalogue.limitations().keySet(), 2).toArray(String[]::new));
    }
    if (chance(4)) {
      other = other.level(1 + random.nextInt(3)).pairing(any(List.of(Pairing.values())));
    }
    if (chance(4)) {
      other =
          other
              .liking(names(3).toArray(String[]::new))
              .disliking(names(3).toArray(String[]::new))
              .excluding(names(3).toArray(String[]::new));
    }
    if (problem.recent().size() == 1 && chance(2)) {
      other = other.done(LocalDate.of(2026, 3, 10), done(), done());
    }
    if (chance(4)) {
      other = other.minutes(4 + random.nextInt(40));
    }
    if (chance(4)) {
      other = other.keeping(keeps(other.problem().clock().perSuperset()));
    }
    if (chance(4)) {
      other = other.undated();
    }
    if (chance(2)) {
      Map<String, Integer> weights = new TreeMap<>();
      List<String> ids = Scorer.sessionConstraints().stream().sorted().toList();
      for (int i = random.nextInt(6); i >= 0; i--) {
        weights.put(any(ids), chance(4) ? 0 : 1 + random.nextInt(12));
      }
      other = other.weighing(weights);
    }
    return other.problem();
  }

  private Done done() {
    return new Done(
        LocalDate.of(2026, 3, 10).minusDays(random.nextInt(16)),
        List.copyOf(some(main.stream().map(Exercise::id).toList(), 12)));
  }

  private Keep[] keeps(int perSuperset) {
    Map<At, Keep> keeps = new LinkedHashMap<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      At at = new At(1 + random.nextInt(5), random.nextInt(perSuperset));
      keeps.put(at, new Keep(at, any(main).id()));
    }
    return keeps.values().toArray(Keep[]::new);
  }

  private Owned owned(String id) {
    Set<Load> loads = EnumSet.of(any(List.of(Load.values())));
    for (Load load : Load.values()) {
      if (!chance(3)) {
        loads.add(load);
      }
    }
    return new Owned(id, 1 + random.nextInt(3), chance(2) ? List.of() : List.of(4.0, 7.5), loads);
  }

  private Set<String> names(int most) {
    Set<String> names = new LinkedHashSet<>();
    for (int i = random.nextInt(most + 1); i > 0; i--) {
      Exercise exercise = any(main);
      names.add(
          any(List.of(exercise.id(), exercise.root(), exercise.family(), exercise.pattern())));
    }
    return names;
  }

  /** Makes a problem part of the record if a file can hold it. */
  private Optional<Asked> ask(Problem problem, boolean everything) {
    try {
      Problem read = reader.read(JsonDocument.of("", ProblemJson.write(problem)), "");
      if (!read.equals(problem)) {
        throw new IllegalStateException("Not the same once written: " + problem);
      }
      List<Exercise> exercises = everything ? main : new ExerciseFilter(problem, catalogue).main();
      Asked asked = new Asked(problems.size(), read, exercises);
      problems.add(asked);
      return Optional.of(asked);
    } catch (InvalidInputException e) {
      return Optional.empty();
    }
  }

  // Sessions

  private Planned plan(Asked asked) {
    Plan plan =
        new SessionPlanner(catalogue, "record").plan(asked.problem(), Limit.of(Effort.QUICK));
    int perSuperset = asked.problem().clock().perSuperset();
    List<Exercise> places = new ArrayList<>();
    plan.session()
        .supersets()
        .forEach(
            superset -> {
              places.addAll(superset.exercises());
              while (places.size() % perSuperset != 0) {
                places.add(null);
              }
            });
    return new Planned(asked, places);
  }

  /** A planned session after some changes, most often such that break no further rule. */
  private Filled nearly(Planned plan) {
    Filled before = filled(plan.asked(), plan.places(), false);
    boolean anything = chance(4);
    for (int tries = 0; tries < 30; tries++) {
      Filled after = filled(plan.asked(), changed(plan), anything);
      if (anything || hard(after) >= hard(before)) {
        return after;
      }
    }
    return before;
  }

  private int hard(Filled session) {
    return scorer.score(new ScoreCase(0, Optional.empty(), List.of(session), null)).hard();
  }

  private List<Exercise> changed(Planned plan) {
    List<Exercise> places = new ArrayList<>(plan.places());
    int perSuperset = plan.asked().problem().clock().perSuperset();
    List<Exercise> usable = plan.asked().exercises().isEmpty() ? main : plan.asked().exercises();
    for (int i = random.nextInt(5); i > 0; i--) {
      int place = random.nextInt(places.size());
      int first = place - place % perSuperset;
      switch (random.nextInt(12)) {
        case 0 -> places.set(place, any(main));
        case 1 -> places.set(place, null);
        case 2 -> Collections.swap(places, place, random.nextInt(places.size()));
        case 3, 4 -> {
          int other = random.nextInt(places.size() / perSuperset) * perSuperset;
          for (int position = 0; position < perSuperset; position++) {
            Collections.swap(places, first + position, other + position);
          }
        }
        case 5 -> {
          for (int position = 0; position < perSuperset; position++) {
            places.add(any(usable));
          }
        }
        default -> {
          Exercise exercise = any(usable);
          places.set(place, exercise);
          if (exercise.isUnilateral() && perSuperset == 2) {
            places.set(first, exercise);
            places.set(first + 1, exercise);
          }
        }
      }
    }
    return places;
  }

  /** What a session is drawn from: everything, a few that repeat, or what its problem allows. */
  private List<Exercise> pool(Asked asked) {
    List<Exercise> usable = asked.exercises().isEmpty() ? main : asked.exercises();
    return switch (random.nextInt(4)) {
      case 0 -> main;
      case 1 -> {
        List<Exercise> few = new ArrayList<>(main);
        Collections.shuffle(few, random);
        yield few.subList(0, 5 + random.nextInt(20));
      }
      default -> usable;
    };
  }

  private List<Exercise> draw(Asked asked, List<Exercise> pool) {
    Problem problem = asked.problem();
    int perSuperset = problem.clock().perSuperset();
    int fit = SessionLength.supersetsThatFit(problem.clock(), problem.minutes());
    int supersets = chance(2) ? Math.max(1, Math.min(9, fit)) : 1 + random.nextInt(8);
    if (chance(3)) {
      return new RandomSessions(catalogue, random.nextLong()).places(supersets * perSuperset, pool);
    }
    List<Exercise> places = new ArrayList<>();
    Set<Exercise> used = new LinkedHashSet<>();
    while (places.size() < supersets * perSuperset) {
      Exercise exercise = any(pool);
      boolean first = places.size() % perSuperset == 0;
      if (chance(25)) {
        places.add(null);
      } else if (exercise.isUnilateral() && perSuperset == 2 && !chance(8)) {
        if (first) {
          places.add(exercise);
          places.add(exercise);
        } else if (chance(5)) {
          places.add(exercise);
        } else if (pool.stream().allMatch(Exercise::isUnilateral)) {
          places.add(null);
        }
      } else if (used.add(exercise) || chance(3)) {
        places.add(exercise);
      }
    }
    for (Keep keep : problem.keep()) {
      int place = (keep.at().superset() - 1) * perSuperset + keep.at().position();
      if (place < places.size() && !chance(3)) {
        places.set(place, catalogue.exercises().get(keep.exercise()));
      }
    }
    return places;
  }

  private Filled filled(Asked asked, List<Exercise> places) {
    return filled(asked, places, chance(2));
  }

  /**
   * With stand-ins.
   *
   * @param spoilt whether some of them are not chosen well
   */
  private Filled filled(Asked asked, List<Exercise> places, boolean spoilt) {
    Problem problem = asked.problem();
    Set<Exercise> all = new LinkedHashSet<>(asked.exercises());
    all.addAll(places);
    all.remove(null);
    SessionFacts facts =
        new SessionFacts(problem, catalogue, all, places.size() / problem.clock().perSuperset());
    Candidate[] work =
        places.stream()
            .map(e -> e == null ? null : facts.candidate(e.id()).orElseThrow())
            .toArray(Candidate[]::new);
    Candidate[] cast = new Candidate[problem.tracks().size() * work.length];
    Ranking ranking = new Ranking(facts);
    new Cast(facts, ranking).choose(work, new Candidate[cast.length], work, cast);
    List<List<Exercise>> standIns = new ArrayList<>();
    for (int track = 0; track < problem.tracks().size(); track++) {
      List<Exercise> own = new ArrayList<>();
      for (int place = 0; place < work.length; place++) {
        Candidate good = cast[track * work.length + place];
        Set<String> used = new LinkedHashSet<>();
        Stream.concat(places.stream(), own.stream())
            .filter(Objects::nonNull)
            .forEach(e -> used.add(e.root()));
        own.add(
            spoilt && chance(3)
                ? other(work[place], used, ranking, track)
                : good == null ? null : good.exercise());
      }
      standIns.add(own);
      all.addAll(own);
    }
    all.remove(null);
    return new Filled(problem, List.copyOf(all), places, standIns);
  }

  private Exercise other(Candidate work, Set<String> used, Ranking ranking, int track) {
    Candidate[] valid = work == null ? new Candidate[0] : ranking.of(work, track).candidates();
    return switch (random.nextInt(7)) {
      case 0 -> null;
      case 1 -> any(main);
      case 2, 3 -> {
        List<Exercise> repeated =
            Stream.of(valid).map(Candidate::exercise).filter(e -> used.contains(e.root())).toList();
        yield repeated.isEmpty() ? null : any(repeated);
      }
      default ->
          valid.length == 0 ? null : valid[random.nextInt(Math.min(valid.length, 8))].exercise();
    };
  }

  // Weeks

  private void week(List<Asked> all, List<Planned> planned, boolean good) {
    List<DayOfWeek> days = new ArrayList<>(List.of(DayOfWeek.values()));
    Collections.shuffle(days, random);
    days = days.subList(0, any(List.of(1, 2, 3, 3, 4, 4, 5, 7)));
    Collections.sort(days);
    List<Planned> some = List.of(any(planned), any(planned));
    List<Asked> asked = List.of(any(all), any(all), any(all));
    List<Exercise> few = new ArrayList<>(main);
    Collections.shuffle(few, random);
    few = few.subList(0, 15 + random.nextInt(60));
    List<WeekSession> sessions = new ArrayList<>();
    List<Filled> filled = new ArrayList<>();
    for (DayOfWeek day : days) {
      Filled session;
      if (good) {
        Planned plan = any(some);
        session = nearly(plan);
      } else {
        Asked own = any(asked);
        List<Exercise> places = draw(own, chance(2) ? few : pool(own));
        int most = 5 * own.problem().clock().perSuperset();
        session = filled(own, places.subList(0, Math.min(places.size(), most)));
      }
      filled.add(session);
      sessions.add(new WeekSession(day, session.problem()));
    }
    List<EarlierSession> earlier = new ArrayList<>();
    int before = 16;
    for (int i = random.nextInt(4); i > 0; i--) {
      before = 1 + random.nextInt(before);
      earlier.add(earlier(before, filled));
    }
    Map<String, SetRange> ranges = new TreeMap<>();
    for (String muscle : catalogue.muscles().keySet()) {
      if (chance(6)) {
        int least = random.nextInt(6);
        ranges.put(muscle, new SetRange(least, least + random.nextInt(8)));
      }
    }
    Map<String, Integer> weights = new TreeMap<>();
    for (String id : Scorer.weekConstraints().stream().sorted().toList()) {
      if (chance(6)) {
        weights.put(id, random.nextInt(6));
      }
    }
    WeekProblem problem = new WeekProblem("Week", sessions, earlier, ranges, chance(3), weights, 1);
    add(Optional.of(problem), filled);
  }

  /** Some of what the week does, and something that it does not know. */
  private EarlierSession earlier(int daysBeforeMonday, List<Filled> week) {
    List<Exercise> likely =
        week.stream().flatMap(f -> f.places().stream()).filter(Objects::nonNull).toList();
    Set<String> ids = new LinkedHashSet<>();
    Map<String, Integer> sets = new TreeMap<>();
    if (chance(3)) {
      ids.add("gone-from-the-catalogue");
    }
    for (int i = random.nextInt(10); i > 0; i--) {
      Exercise exercise = likely.isEmpty() || chance(2) ? any(main) : any(likely);
      ids.add(exercise.id());
      exercise.primary().forEach(muscle -> sets.merge(muscle, 1 + random.nextInt(2), Integer::sum));
    }
    return new EarlierSession(daysBeforeMonday, List.copyOf(ids), sets);
  }

  // Writing

  private void add(Optional<WeekProblem> week, List<Filled> sessions) {
    ScoreCase unsaid = new ScoreCase(cases.size() + 1, week, sessions, null);
    Said said = scorer.score(unsaid);
    check(unsaid, said);
    ObjectNode line = Json.object();
    ArrayNode list = line.putArray("sessions");
    for (Filled session : sessions) {
      ObjectNode json = list.addObject().put("problem", number(session.problem()));
      json.set("places", ids(session.places()));
      if (!session.standIns().isEmpty()) {
        ArrayNode tracks = json.putArray("standIns");
        session.standIns().forEach(track -> tracks.add(ids(track)));
      }
    }
    week.ifPresent(problem -> line.set("week", weekJson(problem)));
    ObjectNode json = line.putObject("said");
    json.putArray("score").add(said.hard()).add(said.medium()).add(said.soft());
    ObjectNode tallies = json.putObject("tallies");
    said.tallies()
        .forEach(
            (key, tally) ->
                tallies.putArray(key).add(tally.matches()).add(tally.amount()).add(tally.points()));
    cases.add(line);
  }

  /** The sum of the ledger is the score that drives the search. */
  private void check(ScoreCase unsaid, Said said) {
    List<SessionSolution> sessions = unsaid.sessions().stream().map(scorer::solution).toList();
    var score =
        unsaid
            .week()
            .map(
                week -> {
                  List<SessionFacts> facts =
                      sessions.stream().map(SessionSolution::getFacts).toList();
                  WeekSolution solution =
                      WeekSolutions.join(new WeekFacts(week, frozen, facts), sessions, Map.of());
                  return new WeekScoreCalculator().calculateScore(solution);
                })
            .orElseGet(() -> new SearchScoreCalculator().calculateScore(sessions.get(0)));
    String search = score.hardScore() + "/" + score.mediumScore() + "/" + score.softScore();
    if (!search.equals(said.score())) {
      throw new IllegalStateException(unsaid + ": " + said.score() + " is not " + search);
    }
  }

  private int number(Problem problem) {
    return problems.stream()
        .filter(asked -> asked.problem() == problem)
        .findFirst()
        .orElseThrow()
        .number();
  }

  private ObjectNode problemJson(Asked asked) {
    ObjectNode line = Json.object();
    line.set("problem", ProblemJson.write(asked.problem()));
    if (asked.exercises().size() == main.size()) {
      line.put("exercises", "all");
    } else {
      line.set("exercises", ids(asked.exercises()));
    }
    return line;
  }

  private static ObjectNode weekJson(WeekProblem week) {
    ObjectNode json = Json.object();
    ArrayNode days = json.putArray("days");
    week.sessions().forEach(session -> days.add(session.day().name()));
    ArrayNode list = json.putArray("earlier");
    for (EarlierSession before : week.earlier()) {
      ObjectNode entry = list.addObject().put("daysBeforeMonday", before.daysBeforeMonday());
      entry.set("exercises", texts(before.exercises()));
      before.directSets().forEach(entry.putObject("directSets")::put);
    }
    ObjectNode ranges = json.putObject("setRanges");
    week.setRanges()
        .forEach((muscle, range) -> ranges.putArray(muscle).add(range.least()).add(range.most()));
    json.put("recoveryIsRule", week.recoveryIsRule());
    week.weights().forEach(json.putObject("weights")::put);
    return json;
  }

  private ObjectNode catalogueJson() {
    ObjectNode json = Json.object();
    ArrayNode muscles = json.putArray("muscles");
    catalogue
        .muscles()
        .values()
        .forEach(
            m ->
                muscles
                    .addObject()
                    .put("id", m.id())
                    .put("region", m.region().name())
                    .put("aspect", m.aspect().name())
                    .put("defaultTarget", m.defaultTarget())
                    .set("opposes", texts(m.opposes())));
    ArrayNode equipment = json.putArray("equipment");
    catalogue
        .equipment()
        .values()
        .forEach(
            e ->
                equipment
                    .addObject()
                    .put("id", e.id())
                    .put("kind", e.kind().name())
                    .put("putOnSeconds", e.putOnSeconds())
                    .put("takeOffSeconds", e.takeOffSeconds())
                    .put("support", e.support())
                    .set("comfortIn", texts(names(e.comfortIn()))));
    ArrayNode limitations = json.putArray("limitations");
    catalogue
        .limitations()
        .values()
        .forEach(
            l -> {
              ObjectNode at = limitations.addObject().put("id", l.id());
              at.set("maxDemand", joints(l.maxDemand()));
              at.set("avoidTraits", texts(l.avoidTraits()));
              at.set("avoidPositions", texts(names(l.avoidPositions())));
            });
    ArrayNode exercises = json.putArray("exercises");
    catalogue.exercises().values().forEach(e -> exercises.add(exerciseJson(e)));
    return json;
  }

  private static ObjectNode exerciseJson(Exercise exercise) {
    ObjectNode json =
        Json.object()
            .put("id", exercise.id())
            .put("part", exercise.part().name())
            .put("pattern", exercise.pattern())
            .put("family", exercise.family());
    exercise.variantOf().ifPresent(base -> json.put("variantOf", base));
    json.put("multiJoint", exercise.multiJoint())
        .put("intensity", exercise.intensity())
        .put("level", exercise.level());
    json.set("primary", texts(exercise.primary()));
    json.set("secondary", texts(exercise.secondary()));
    json.put("sides", exercise.sides().name()).put("position", exercise.position().name());
    ArrayNode needs = json.putArray("needs");
    exercise
        .needs()
        .forEach(
            need -> {
              ObjectNode at =
                  needs.addObject().put("equipment", need.equipment()).put("count", need.count());
              need.load().ifPresent(load -> at.put("load", load.name()));
            });
    json.set("allowsWorn", texts(exercise.allowsWorn()));
    json.set("demand", joints(exercise.demand()));
    json.set("traits", texts(exercise.traits()));
    return json;
  }

  private static ObjectNode joints(Map<Joint, Integer> joints) {
    ObjectNode json = Json.object();
    joints.forEach((joint, demand) -> json.put(joint.name(), demand));
    return json;
  }

  private static List<String> names(Collection<Position> positions) {
    return positions.stream().map(Enum::name).toList();
  }

  private static ArrayNode ids(Collection<Exercise> exercises) {
    return texts(
        exercises.stream().map(exercise -> exercise == null ? null : exercise.id()).toList());
  }

  private static ArrayNode texts(Collection<String> texts) {
    ArrayNode list = Json.array();
    texts.forEach(list::add);
    return list;
  }

  // Chance

  private boolean chance(int oneIn) {
    return random.nextInt(oneIn) == 0;
  }

  private <T> T any(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  private Set<String> some(Collection<String> all, int most) {
    Set<String> some = new LinkedHashSet<>();
    List<String> list = List.copyOf(all);
    for (int i = random.nextInt(most + 1); i > 0; i--) {
      some.add(any(list));
    }
    return some;
  }
}
