package counterset.cli;

import counterset.catalogue.Catalogues;
import counterset.model.Catalogue;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** Which catalogue a command works with. */
final class CatalogueOptions {

  @Option(
      names = "--catalogue",
      paramLabel = "DIR",
      description = "Use this catalogue instead of the built-in one.")
  String replacement;

  @Option(
      names = "--add-catalogue",
      paramLabel = "DIR",
      description = "Add these files to the catalogue. May be repeated.")
  List<String> additions = new ArrayList<>();

  Catalogue load(Shell shell) {
    Catalogue catalogue =
        replacement == null ? Catalogues.embedded() : Catalogues.load(shell.path(replacement));
    for (String addition : additions) {
      catalogue = Catalogues.extend(catalogue, shell.path(addition));
    }
    return catalogue;
  }
}
