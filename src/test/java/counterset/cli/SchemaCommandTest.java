package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import counterset.json.Schemas;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SchemaCommandTest {

  private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";

  @TempDir Path folder;

  static List<String> names() {
    return Schemas.names();
  }

  @Test
  void withoutANameTheNamesAreListed() {
    Cli schema = Cli.run(folder, "schema").succeeds();
    assertThat(schema.out().lines()).isEqualTo(names()).contains("problem", "plan", "exercises");
  }

  @ParameterizedTest
  @MethodSource("names")
  void aSchemaIsValidByItsDraft(String name) {
    Cli schema = Cli.run(folder, "schema", name).succeeds();
    assertThat(schema.json().at("/$schema").textValue()).isEqualTo(DRAFT);
    var draft =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(com.networknt.schema.SchemaLocation.of(DRAFT));
    assertThat(draft.validate(schema.out(), InputFormat.JSON)).isEmpty();
    assertThat(schema.err()).isEmpty();
  }

  @Test
  void anUnknownNameIsRefusedWithTheNearestOne() {
    assertThat(Cli.run(folder, "schema", "exercise").isRefused(1).err())
        .startsWith("There is no schema (exercise). Maybe \"exercises\"? There are: muscles, ");
  }
}
