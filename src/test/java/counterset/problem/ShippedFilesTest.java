package counterset.problem;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.json.JsonFiles;
import counterset.json.Schemas;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every file that comes with the project fits its schema. */
class ShippedFilesTest {

  @TestFactory
  Stream<DynamicTest> catalogueFilesFitTheirSchemas() throws IOException {
    Path catalogue = Path.of("catalogue");
    Stream<DynamicTest> single =
        Stream.of("muscles", "equipment", "limitations", "traits")
            .map(name -> fits(catalogue.resolve(name + ".json"), name));
    return Stream.concat(
        single, json(catalogue.resolve("exercises")).stream().map(file -> fits(file, "exercises")));
  }

  @TestFactory
  Stream<DynamicTest> problemFilesFitTheirSchema() throws IOException {
    return json(Path.of("problems")).stream()
        .filter(file -> JsonFiles.read(file).tree().has("problem"))
        .map(file -> fits(file, "problem"));
  }

  private static DynamicTest fits(Path file, String schema) {
    return DynamicTest.dynamicTest(
        file.toString(),
        () -> assertThat(Schemas.validate(JsonFiles.read(file), schema)).isEmpty());
  }

  private static List<Path> json(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
  }
}
