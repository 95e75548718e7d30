package counterset.quality;

import counterset.catalogue.Catalogues;
import counterset.intake.Request;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How far plans of other seeds differ, and what that costs: a third of the exercises should change,
 * for a few points. By command; arguments are asks in place of the usual ones.
 */
public final class Moods {

  private static final int SEEDS = 8;
  private static final List<String> ASKS =
      List.of(
          "20 min, whole body, two dumbbells, intermediate",
          "20 min, lower body, dumbbells plus ankle weights, sore knees",
          "15 min, core, mat, intermediate",
          "30 min, upper body, dumbbells and a bench, intermediate");

  private Moods() {}

  /** Writes {@code moods.txt}. */
  public static void main(String[] args) throws IOException {
    Catalogue catalogue = Catalogues.embedded();
    List<String> asks = args.length == 0 ? ASKS : List.of(args);
    Reports.tell(
        "moods.txt", asks.stream().map(it -> line(it, catalogue)).collect(Collectors.joining()));
  }

  private static String line(String ask, Catalogue catalogue) {
    Problem problem = Request.session(List.of(ask), catalogue, Path.of("")).problem();
    List<Plan> plans = new ArrayList<>();
    for (long seed = 1; seed <= SEEDS; seed++) {
      plans.add(ReferenceTable.planned(problem.withSeed(seed), catalogue));
    }
    IntSummaryStatistics soft =
        plans.stream().mapToInt(it -> it.score().soft()).summaryStatistics();
    return String.format(
        Locale.ROOT,
        "%s%n  seeds 1 to %d: %.0f of 100 exercises in common by pairs; soft %d to %d, mean %.0f,"
            + " seed 1 %d; medium at least %d%n",
        ask,
        SEEDS,
        100 * common(plans),
        soft.getMin(),
        soft.getMax(),
        soft.getAverage(),
        plans.get(0).score().soft(),
        plans.stream().mapToInt(it -> it.score().medium()).min().orElseThrow());
  }

  /** Of the exercises of one plan, the share that another has too: the mean of all pairs. */
  private static double common(List<Plan> plans) {
    double sum = 0;
    int pairs = 0;
    for (int one = 0; one < plans.size(); one++) {
      for (int other = one + 1; other < plans.size(); other++) {
        Set<Exercise> shared = work(plans.get(one));
        int size = shared.size() + work(plans.get(other)).size();
        shared.retainAll(work(plans.get(other)));
        sum += 2.0 * shared.size() / size;
        pairs++;
      }
    }
    return sum / pairs;
  }

  private static Set<Exercise> work(Plan plan) {
    return plan.session().work().collect(Collectors.toCollection(HashSet::new));
  }
}
