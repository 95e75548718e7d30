package counterset.catalogue;

import static counterset.catalogue.SmallCatalogue.exercise;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterset.json.InvalidInputException;
import counterset.model.Catalogue;
import counterset.model.Joint;
import counterset.model.Load;
import counterset.model.Need;
import counterset.model.Part;
import counterset.model.Position;
import counterset.model.Region;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CataloguesTest {

  private static final Catalogue NOTHING = Catalogue.of(List.of(), List.of(), List.of(), List.of());

  @TempDir Path temporary;
  private Path folder;
  private Path more;

  @BeforeEach
  void folders() throws IOException {
    folder = Files.createDirectory(temporary.resolve("catalogue"));
    more = Files.createDirectory(temporary.resolve("more"));
    SmallCatalogue.in(folder);
  }

  @Test
  void theEmbeddedCatalogueIsTheValidatedOne() {
    Path directory = Path.of("catalogue");
    assertThat(Catalogues.embedded()).isEqualTo(Catalogues.load(directory));
  }

  @Test
  void readsFromAJar() throws IOException {
    Path jar = temporary.resolve("a.jar");
    try (OutputStream out = Files.newOutputStream(jar);
        JarOutputStream entries = new JarOutputStream(out);
        Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        entries.putNextEntry(
            new JarEntry("catalogue/" + folder.relativize(file).toString().replace('\\', '/')));
        Files.copy(file, entries);
      }
    }
    try (URLClassLoader loader = new URLClassLoader(new URL[] {jar.toUri().toURL()}, null)) {
      Catalogue embedded = Sheets.trusted(EmbeddedFiles.read(loader)).joinedTo(NOTHING);
      assertThat(embedded).isEqualTo(Catalogues.load(folder));
    }
  }

  @Test
  void readsEveryField() {
    Catalogue catalogue =
        Catalogues.extend(
            Catalogues.load(folder),
            directory(
                more,
                "exercises/x.json",
                "["
                    + exercise(
                        "carry",
                        ", \"secondary\": [\"shins\"], \"needs\": [{\"equipment\": \"dumbbell\", \"count\": 2,"
                            + " \"load\": \"heavy\"}], \"allowsWorn\": [\"ankle-weights\"], \"names\": [\"farmer\"],"
                            + " \"faults\": [\"Leaning.\"], \"variantOf\": \"squat\"")
                    + "]"));
    var carry = catalogue.exercises().get("carry");
    assertThat(carry.needs()).containsExactly(new Need("dumbbell", 2, Optional.of(Load.HEAVY)));
    assertThat(carry.allowsWorn()).containsExactly("ankle-weights");
    assertThat(carry.secondary()).containsExactly("shins");
    assertThat(carry.names()).containsExactly("farmer");
    assertThat(carry.faults()).containsExactly("Leaning.");
    assertThat(carry.root()).isEqualTo("squat");
    assertThat(carry.part()).isEqualTo(Part.MAIN);
    assertThat(carry.demandOn(Joint.KNEE)).isEqualTo(2);
    assertThat(carry.met().code()).isEqualTo("02052");
    assertThat(carry.seconds()).isEmpty();
    assertThat(catalogue.equipment().get("mat").comfortIn()).containsExactly(Position.SUPINE);
    assertThat(catalogue.muscles().get("shins").defaultTarget()).isFalse();
    assertThat(catalogue.muscles().get("quadriceps").region()).isEqualTo(Region.LOWER);
  }

  @Test
  void anAddedMuscleIsOpposedInTurn() {
    directory(
        more,
        "muscles.json",
        "[{\"id\": \"calves\", \"name\": \"Calves\", \"region\": \"lower\", \"aspect\": \"back\", \"opposes\": [\"shins\"]}]");
    Catalogue catalogue = Catalogues.extend(Catalogues.load(folder), more);
    assertThat(catalogue.muscles().get("shins").opposes()).containsExactly("calves");
  }

  @Test
  void anIdThatExistsCannotBeAdded() {
    directory(more, "exercises/x.json", "[" + exercise("squat", "") + "]");
    Catalogue base = Catalogues.load(folder);
    assertThatThrownBy(() -> Catalogues.extend(base, more))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining(
            "x.json:1 /0/id: The exercise (squat) is there already, in the catalogue that is added to");
  }

  @Test
  void aNewTraitMustBeListed() {
    directory(
        more,
        "exercises/x.json",
        "[" + exercise("hop", ", \"traits\": [\"jump\", \"twirl\"]") + "]");
    Catalogue base = Catalogues.load(folder);
    assertThatThrownBy(() -> Catalogues.extend(base, more))
        .hasMessageContaining("The trait (twirl) is not known.")
        .hasMessageNotContaining("jump");
    directory(more, "traits.json", "[{\"id\": \"twirl\", \"meaning\": \"Turns.\"}]");
    assertThat(Catalogues.extend(base, more).exercises()).containsKey("hop");
  }

  @Test
  void anEmptyOrMissingDirectoryIsAFault() {
    Catalogue base = Catalogues.load(folder);
    assertThatThrownBy(() -> Catalogues.extend(base, more))
        .hasMessageContaining("There is nothing to add");
    assertThatThrownBy(() -> Catalogues.load(temporary.resolve("none")))
        .hasMessageContaining("There is no such catalogue directory.");
  }

  private static Path directory(Path directory, String file, String text) {
    try {
      Path path = directory.resolve(file);
      Files.createDirectories(path.getParent());
      Files.writeString(path, text);
      return directory;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
