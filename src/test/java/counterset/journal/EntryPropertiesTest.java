package counterset.journal;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.json.Json;
import counterset.json.JsonDocument;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Whatever an entry holds, its line says the same. */
class EntryPropertiesTest {

  @Property(tries = 300)
  void readingALineGivesTheEntry(
      @ForAll @IntRange(min = 0, max = 40_000) int day,
      @ForAll @IntRange(min = 1, max = 1440) int minutes,
      @ForAll @IntRange(min = 0, max = 20) int halves,
      @ForAll @DoubleRange(min = 1, max = 500) double mass,
      @ForAll @DoubleRange(min = 0.01, max = 1000) double kg,
      @ForAll @IntRange(min = 1, max = 1000) int reps,
      @ForAll String text) {
    String words = "n" + text.replaceAll("[\\p{Cc}\\p{Cs}]", "-").strip();
    Entry entry =
        Entry.builder()
            .date(LocalDate.of(1990, 1, 1).plusDays(day))
            .title(words.substring(0, Math.min(200, words.length())).replaceAll("\\p{Cs}", ""))
            .minutes(minutes)
            .rpe(halves / 2.0)
            .note(
                Optional.of(
                    words.substring(0, Math.min(900, words.length())).replaceAll("\\p{Cs}", "")))
            .mass(OptionalDouble.of(mass))
            .exercises(List.of(new ExerciseSets("hip-hinge", reps)))
            .loads(List.of(new Lift("hip-hinge", kg, reps, 1)))
            .muscles(List.of(new MuscleSets("hamstrings", reps, minutes)))
            .energy(List.of(new EnergyBlock("warm-up", minutes, 2.3, List.of("02101 (2024)"))))
            .build();
    String line = Json.line(EntryJson.write(entry));
    assertThat(line).doesNotContain("\n", "\r");
    assertThat(EntryReader.read(JsonDocument.parse("log", line))).isEqualTo(entry);
  }
}
