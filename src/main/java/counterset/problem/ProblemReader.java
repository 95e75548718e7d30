package counterset.problem;

import counterset.json.Cursor;
import counterset.json.Faults;
import counterset.json.InvalidInputException;
import counterset.json.JsonDocument;
import counterset.json.JsonFiles;
import counterset.json.Schemas;
import counterset.model.Catalogue;
import counterset.model.Problem;
import java.nio.file.Path;
import java.util.Set;

/** Reads problems against a catalogue: fills in every default and checks every reference. */
public final class ProblemReader {

  private final Catalogue catalogue;
  private final ReferenceRules references;
  private final PlaceRules places;

  /**
   * A reader for one catalogue.
   *
   * @param constraintIds the constraints whose weights a problem may change
   */
  public ProblemReader(Catalogue catalogue, Set<String> constraintIds) {
    this.catalogue = catalogue;
    this.references = new ReferenceRules(catalogue, constraintIds);
    this.places = new PlaceRules(catalogue);
  }

  /**
   * Reads a problem file.
   *
   * @throws InvalidInputException with all its faults
   */
  public Problem read(Path file) {
    return read(JsonFiles.read(file), "");
  }

  /**
   * Reads the problem that a pointer leads to; empty text for the whole document.
   *
   * @throws InvalidInputException with all its faults
   */
  public Problem read(JsonDocument document, String pointerPrefix) {
    Faults faults = new Faults(document);
    faults.settle(Schemas.validate(document, pointerPrefix, "problem"));
    Cursor problem = Cursor.at(faults, pointerPrefix);
    TargetList targets = TargetList.read(problem.field("targets"), catalogue);
    references.check(problem);
    places.check(problem);
    faults.throwIfAny();
    return ProblemValues.read(problem, targets.targets());
  }
}
