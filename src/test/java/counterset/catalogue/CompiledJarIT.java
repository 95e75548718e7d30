package counterset.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.jar.JarFile;
import org.junit.jupiter.api.Test;

/** The packaged catalogue is compiled from the files of this build. */
class CompiledJarIT {

  @Test
  void theJarHoldsTheBytesOfTheFiles() throws Exception {
    try (JarFile jar = new JarFile(Path.of("target", "counterset.jar").toFile());
        InputStream in = jar.getInputStream(jar.getJarEntry(Compiled.FILE))) {
      assertThat(in.readAllBytes()).isEqualTo(CompiledWriter.bytes(Catalogues.embeddedFiles()));
    }
  }
}
