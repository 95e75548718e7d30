package counterset.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Makes exercises. Lists, sets and optional parts that are not set are empty; the others must be
 * set.
 */
public final class ExerciseBuilder {

  private String id;
  private String name;
  private List<String> names = List.of();
  private Part part;
  private String pattern;
  private String family;
  private Optional<String> variantOf = Optional.empty();
  private boolean multiJoint;
  private int intensity;
  private int level;
  private int standing = Exercise.KNOWN;
  private List<String> standingSources = List.of();
  private Set<String> primary = Set.of();
  private Set<String> secondary = Set.of();
  private Sides sides;
  private Position position;
  private List<Need> needs = List.of();
  private Set<String> allowsWorn = Set.of();
  private Map<Joint, Integer> demand = Map.of();
  private String demandSource;
  private Set<String> traits = Set.of();
  private Met met;
  private OptionalInt seconds = OptionalInt.empty();
  private String setup;
  private List<String> cues = List.of();
  private List<String> faults = List.of();
  private Optional<String> figure = Optional.empty();

  ExerciseBuilder() {}

  ExerciseBuilder(Exercise exercise) {
    id = exercise.id();
    name = exercise.name();
    names = exercise.names();
    part = exercise.part();
    pattern = exercise.pattern();
    family = exercise.family();
    variantOf = exercise.variantOf();
    multiJoint = exercise.multiJoint();
    intensity = exercise.intensity();
    level = exercise.level();
    standing = exercise.standing();
    standingSources = exercise.standingSources();
    primary = exercise.primary();
    secondary = exercise.secondary();
    sides = exercise.sides();
    position = exercise.position();
    needs = exercise.needs();
    allowsWorn = exercise.allowsWorn();
    demand = exercise.demand();
    demandSource = exercise.demandSource();
    traits = exercise.traits();
    met = exercise.met();
    seconds = exercise.seconds();
    setup = exercise.setup();
    cues = exercise.cues();
    faults = exercise.faults();
    figure = exercise.figure();
  }

  public ExerciseBuilder id(String value) {
    id = value;
    return this;
  }

  public ExerciseBuilder name(String value) {
    name = value;
    return this;
  }

  public ExerciseBuilder names(List<String> value) {
    names = value;
    return this;
  }

  public ExerciseBuilder part(Part value) {
    part = value;
    return this;
  }

  public ExerciseBuilder pattern(String value) {
    pattern = value;
    return this;
  }

  public ExerciseBuilder family(String value) {
    family = value;
    return this;
  }

  public ExerciseBuilder variantOf(Optional<String> value) {
    variantOf = value;
    return this;
  }

  public ExerciseBuilder multiJoint(boolean value) {
    multiJoint = value;
    return this;
  }

  public ExerciseBuilder intensity(int value) {
    intensity = value;
    return this;
  }

  public ExerciseBuilder level(int value) {
    level = value;
    return this;
  }

  public ExerciseBuilder standing(int value) {
    standing = value;
    return this;
  }

  public ExerciseBuilder standingSources(List<String> value) {
    standingSources = value;
    return this;
  }

  public ExerciseBuilder primary(Set<String> value) {
    primary = value;
    return this;
  }

  public ExerciseBuilder secondary(Set<String> value) {
    secondary = value;
    return this;
  }

  public ExerciseBuilder sides(Sides value) {
    sides = value;
    return this;
  }

  public ExerciseBuilder position(Position value) {
    position = value;
    return this;
  }

  public ExerciseBuilder needs(List<Need> value) {
    needs = value;
    return this;
  }

  public ExerciseBuilder allowsWorn(Set<String> value) {
    allowsWorn = value;
    return this;
  }

  public ExerciseBuilder demand(Map<Joint, Integer> value) {
    demand = value;
    return this;
  }

  public ExerciseBuilder demandSource(String value) {
    demandSource = value;
    return this;
  }

  public ExerciseBuilder traits(Set<String> value) {
    traits = value;
    return this;
  }

  public ExerciseBuilder met(Met value) {
    met = value;
    return this;
  }

  public ExerciseBuilder seconds(OptionalInt value) {
    seconds = value;
    return this;
  }

  public ExerciseBuilder setup(String value) {
    setup = value;
    return this;
  }

  public ExerciseBuilder cues(List<String> value) {
    cues = value;
    return this;
  }

  public ExerciseBuilder faults(List<String> value) {
    faults = value;
    return this;
  }

  public ExerciseBuilder figure(Optional<String> value) {
    figure = value;
    return this;
  }

  /** The exercise, checked. */
  public Exercise build() {
    return new Exercise(
        id,
        name,
        names,
        part,
        pattern,
        family,
        variantOf,
        multiJoint,
        intensity,
        level,
        standing,
        standingSources,
        primary,
        secondary,
        sides,
        position,
        needs,
        allowsWorn,
        demand,
        demandSource,
        traits,
        met,
        seconds,
        setup,
        cues,
        faults,
        figure);
  }
}
