package counterset.report.text;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Muscle;
import java.util.Optional;

/** Names of what a journal knows by id only: a later catalogue may not have it any more. */
final class Names {

  private Names() {}

  static String exercise(String id, Catalogue catalogue) {
    return Optional.ofNullable(catalogue.exercises().get(id)).map(Exercise::name).orElse(id);
  }

  static String muscle(String id, Catalogue catalogue) {
    return Optional.ofNullable(catalogue.muscles().get(id)).map(Muscle::name).orElse(id);
  }
}
