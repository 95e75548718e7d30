package counterset.catalogue;

import counterset.json.InvalidInputException;
import counterset.model.Catalogue;
import counterset.model.Wants;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;

/** The ways to come by a catalogue. */
public final class Catalogues {

  private static final Catalogue NOTHING =
      new Catalogue(Map.of(), Map.of(), Map.of(), Map.of(), Wants.NOTHING);

  private Catalogues() {}

  /**
   * The catalogue inside the program: from the class path, trusted, without validation. Read once.
   */
  public static Catalogue embedded() {
    return Embedded.CATALOGUE;
  }

  private static final class Embedded {

    static final Catalogue CATALOGUE = read();

    private static Catalogue read() {
      CatalogueFiles files = EmbeddedFiles.read();
      InvalidInputException.throwIfAny(files.faults());
      return Sheets.trusted(files).joinedTo(NOTHING);
    }
  }

  /**
   * A catalogue of the user: {@code muscles.json}, {@code equipment.json}, {@code
   * limitations.json}, perhaps {@code traits.json}, {@code patterns.json} and {@code regions.json},
   * and all files in {@code exercises}.
   *
   * @throws InvalidInputException with all faults of all files
   */
  public static Catalogue load(Path directory) {
    return checked(CatalogueFiles.in(directory, true), NOTHING);
  }

  /**
   * A catalogue with the additions of a directory, in which any of the files may be absent. A
   * muscle group that opposes one of the base is opposed by it in turn.
   *
   * @throws InvalidInputException with all faults of all files; an id that the base has already is
   *     one
   */
  public static Catalogue extend(Catalogue base, Path directory) {
    return checked(CatalogueFiles.in(directory, false), base);
  }

  private static Catalogue checked(CatalogueFiles files, Catalogue base) {
    Sheets sheets = Sheets.validated(files);
    new Integrity(base, sheets).check();
    InvalidInputException.throwIfAny(
        Stream.concat(files.faults().stream(), sheets.violations().stream()).toList());
    return sheets.joinedTo(base);
  }
}
