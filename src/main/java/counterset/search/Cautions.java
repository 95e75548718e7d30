package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.List;

/** The cautions that every plan carries, and those of the client's limitations. */
final class Cautions {

  private static final List<String> USUAL =
      List.of(
          "Get cleared by a licensed professional before training after an injury or surgery, in pregnancy, or with a heart,"
              + " blood-pressure or bone condition.",
          "Stop at once on chest pain, dizziness, unusual breathlessness or sharp joint pain.",
          "Breathe out on the effort and never hold the breath under load.",
          "This plan does not examine or treat anyone; local rules and licensed practice come first.");

  private Cautions() {}

  static List<String> of(Problem problem, Catalogue catalogue) {
    List<String> cautions = new ArrayList<>(USUAL);
    problem.limitations().forEach(id -> cautions.add(catalogue.limitations().get(id).caution()));
    return cautions;
  }
}
