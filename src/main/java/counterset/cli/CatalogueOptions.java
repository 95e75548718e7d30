package counterset.cli;

import counterset.catalogue.Catalogues;
import counterset.catalogue.Figures;
import counterset.model.Catalogue;
import counterset.model.Figure;
import counterset.report.html.Drawings;
import counterset.report.html.Pictures;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
        replacement == null ? shell.catalogue().get() : Catalogues.load(shell.path(replacement));
    for (String addition : additions) {
      catalogue = Catalogues.extend(catalogue, shell.path(addition));
    }
    return catalogue;
  }

  /** The pictures of the exercises of {@link #load}. */
  Pictures pictures(Shell shell) {
    return new Drawings(
        () -> {
          Map<String, Figure> figures =
              new HashMap<>(
                  replacement == null ? Figures.embedded() : Figures.load(shell.path(replacement)));
          additions.forEach(addition -> figures.putAll(Figures.load(shell.path(addition))));
          return figures;
        });
  }
}
