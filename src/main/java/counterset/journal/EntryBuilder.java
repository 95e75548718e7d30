package counterset.journal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Makes entries. Lists and optional parts that are not set are empty; the others must be set. */
public final class EntryBuilder {

  private LocalDate date;
  private String title;
  private int minutes;
  private double rpe;
  private Optional<String> note = Optional.empty();
  private OptionalDouble mass = OptionalDouble.empty();
  private List<ExerciseSets> exercises = List.of();
  private List<Lift> loads = List.of();
  private List<MuscleSets> muscles = List.of();
  private List<EnergyBlock> energy = List.of();

  EntryBuilder() {}

  EntryBuilder(Entry entry) {
    date = entry.date();
    title = entry.title();
    minutes = entry.minutes();
    rpe = entry.rpe();
    note = entry.note();
    mass = entry.mass();
    exercises = entry.exercises();
    loads = entry.loads();
    muscles = entry.muscles();
    energy = entry.energy();
  }

  public EntryBuilder date(LocalDate value) {
    date = value;
    return this;
  }

  public EntryBuilder title(String value) {
    title = value;
    return this;
  }

  public EntryBuilder minutes(int value) {
    minutes = value;
    return this;
  }

  public EntryBuilder rpe(double value) {
    rpe = value;
    return this;
  }

  public EntryBuilder note(Optional<String> value) {
    note = value;
    return this;
  }

  public EntryBuilder mass(OptionalDouble value) {
    mass = value;
    return this;
  }

  public EntryBuilder exercises(List<ExerciseSets> value) {
    exercises = value;
    return this;
  }

  public EntryBuilder loads(List<Lift> value) {
    loads = value;
    return this;
  }

  public EntryBuilder muscles(List<MuscleSets> value) {
    muscles = value;
    return this;
  }

  public EntryBuilder energy(List<EnergyBlock> value) {
    energy = value;
    return this;
  }

  /** The entry, checked. */
  public Entry build() {
    return new Entry(date, title, minutes, rpe, note, mass, exercises, loads, muscles, energy);
  }
}
