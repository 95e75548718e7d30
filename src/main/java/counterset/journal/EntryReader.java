package counterset.journal;

import counterset.json.Cursor;
import counterset.json.Faults;
import counterset.json.InvalidInputException;
import counterset.json.JsonDocument;
import counterset.json.Schemas;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads one line of a journal. Ids are taken as they are: what was done stays done, even if a later
 * catalogue has another name for it.
 */
final class EntryReader {

  private EntryReader() {}

  /**
   * Reads an entry.
   *
   * @throws InvalidInputException with all its faults
   */
  static Entry read(JsonDocument document) {
    Faults faults = new Faults(document);
    faults.settle(Schemas.validate(document, "journal"));
    Cursor at = Cursor.at(faults, "");
    Optional<LocalDate> date = date(at.field("date"));
    faults.throwIfAny();
    Optional<Double> mass = at.field("mass").number();
    return Entry.builder()
        .date(date.orElseThrow())
        .title(text(at, "title"))
        .minutes(whole(at, "minutes"))
        .rpe(number(at, "rpe"))
        .note(at.field("note").text())
        .mass(mass.isPresent() ? OptionalDouble.of(mass.get()) : OptionalDouble.empty())
        .exercises(
            list(at, "exercises").stream()
                .map(done -> new ExerciseSets(text(done, "exercise"), whole(done, "sets")))
                .toList())
        .loads(list(at, "loads").stream().map(EntryReader::lift).toList())
        .muscles(
            list(at, "muscles").stream()
                .map(
                    muscle ->
                        new MuscleSets(
                            text(muscle, "muscle"),
                            whole(muscle, "direct"),
                            whole(muscle, "indirect")))
                .toList())
        .energy(list(at, "energy").stream().map(EntryReader::block).toList())
        .build();
  }

  private static Optional<LocalDate> date(Cursor at) {
    Optional<String> text = at.text();
    try {
      return text.map(LocalDate::parse);
    } catch (DateTimeParseException e) {
      at.fault("The date (" + text.orElseThrow() + ") is not in the calendar.");
      return Optional.empty();
    }
  }

  private static Lift lift(Cursor at) {
    return new Lift(text(at, "exercise"), number(at, "kg"), whole(at, "reps"), whole(at, "set"));
  }

  private static EnergyBlock block(Cursor at) {
    return new EnergyBlock(
        text(at, "part"), whole(at, "seconds"), number(at, "met"), at.field("codes").texts());
  }

  private static List<Cursor> list(Cursor at, String name) {
    return at.field(name).elements();
  }

  private static String text(Cursor at, String name) {
    return at.field(name).text().orElseThrow();
  }

  private static int whole(Cursor at, String name) {
    return at.field(name).integer().orElseThrow();
  }

  private static double number(Cursor at, String name) {
    return at.field(name).number().orElseThrow();
  }
}
