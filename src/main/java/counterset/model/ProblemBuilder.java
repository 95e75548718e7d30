package counterset.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Makes problems. A part that is not set has the value of a coach who names none; only targets must
 * be set.
 */
public final class ProblemBuilder {

  private String title = "Session";
  private int minutes = Problem.DEFAULT_MINUTES;
  private Intervals clock = Intervals.EXPRESS;
  private List<Target> targets = List.of();
  private List<Owned> equipment = List.of();
  private Set<String> limitations = Set.of();
  private List<Set<String>> tracks = List.of();
  private int level = Problem.DEFAULT_LEVEL;
  private Pairing pairing = Pairing.OPPOSING;
  private Set<String> include = Set.of();
  private Set<String> exclude = Set.of();
  private List<Keep> keep = List.of();
  private Set<String> likes = Set.of();
  private Set<String> dislikes = Set.of();
  private List<Done> recent = List.of();
  private Optional<LocalDate> date = Optional.empty();
  private Map<String, Integer> weights = Map.of();
  private long seed = 1;

  ProblemBuilder() {}

  ProblemBuilder(Problem problem) {
    title = problem.title();
    minutes = problem.minutes();
    clock = problem.clock();
    targets = problem.targets();
    equipment = problem.equipment();
    limitations = problem.limitations();
    tracks = problem.tracks();
    level = problem.level();
    pairing = problem.pairing();
    include = problem.include();
    exclude = problem.exclude();
    keep = problem.keep();
    likes = problem.likes();
    dislikes = problem.dislikes();
    recent = problem.recent();
    date = problem.date();
    weights = problem.weights();
    seed = problem.seed();
  }

  public ProblemBuilder title(String value) {
    title = value;
    return this;
  }

  public ProblemBuilder minutes(int value) {
    minutes = value;
    return this;
  }

  public ProblemBuilder clock(Intervals value) {
    clock = value;
    return this;
  }

  public ProblemBuilder targets(List<Target> value) {
    targets = value;
    return this;
  }

  public ProblemBuilder equipment(List<Owned> value) {
    equipment = value;
    return this;
  }

  public ProblemBuilder limitations(Set<String> value) {
    limitations = value;
    return this;
  }

  public ProblemBuilder tracks(List<Set<String>> value) {
    tracks = value;
    return this;
  }

  public ProblemBuilder level(int value) {
    level = value;
    return this;
  }

  public ProblemBuilder pairing(Pairing value) {
    pairing = value;
    return this;
  }

  public ProblemBuilder include(Set<String> value) {
    include = value;
    return this;
  }

  public ProblemBuilder exclude(Set<String> value) {
    exclude = value;
    return this;
  }

  public ProblemBuilder keep(List<Keep> value) {
    keep = value;
    return this;
  }

  public ProblemBuilder likes(Set<String> value) {
    likes = value;
    return this;
  }

  public ProblemBuilder dislikes(Set<String> value) {
    dislikes = value;
    return this;
  }

  public ProblemBuilder recent(List<Done> value) {
    recent = value;
    return this;
  }

  public ProblemBuilder date(Optional<LocalDate> value) {
    date = value;
    return this;
  }

  public ProblemBuilder weights(Map<String, Integer> value) {
    weights = value;
    return this;
  }

  public ProblemBuilder seed(long value) {
    seed = value;
    return this;
  }

  /** The problem, checked. */
  public Problem build() {
    return new Problem(
        title,
        minutes,
        clock,
        targets,
        equipment,
        limitations,
        tracks,
        level,
        pairing,
        include,
        exclude,
        keep,
        likes,
        dislikes,
        recent,
        date,
        weights,
        seed);
  }
}
