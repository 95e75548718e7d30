package counterset.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterset.model.Catalogue;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** The compiled catalogue says what the files say, in their order. */
class CompiledTest {

  private static final Catalogue FILES = Catalogues.embeddedFiles();

  @Test
  void compiledAndReadAgainItIsTheSame() {
    Catalogue read = CompiledReader.catalogue(CompiledWriter.bytes(FILES));
    assertThat(read).isEqualTo(FILES);
    assertThat(read.toString()).as("order").isEqualTo(FILES.toString());
  }

  @Test
  void theSameCatalogueGivesTheSameBytes() {
    byte[] bytes = CompiledWriter.bytes(FILES);
    assertThat(CompiledWriter.bytes(CompiledReader.catalogue(bytes))).isEqualTo(bytes);
  }

  @Test
  void moreThanACatalogueIsRefused() {
    byte[] bytes = CompiledWriter.bytes(FILES);
    assertThatThrownBy(() -> CompiledReader.catalogue(Arrays.copyOf(bytes, bytes.length + 2)))
        .isInstanceOf(IllegalStateException.class);
  }

  @Test
  void outsideAJarTheFilesAreRead() {
    assertThat(Compiled.catalogue()).isEmpty();
  }
}
