package counterset.quality;

import counterset.catalogue.Catalogues;
import counterset.intake.Request;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.score.Candidate;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Plans for asks that nobody chose, against what any coach would expect of them. By command. */
public final class RandomAsks {

  private static final int ASKS = 30;
  private static final long SEED = 7;
  private static final int STAPLE = 3;
  private static final List<String> REGIONS =
      List.of("lower body", "upper body", "whole body", "core", "glutes and hamstrings", "arms");
  private static final List<String> EQUIPMENT =
      List.of(
          "no equipment",
          "dumbbells",
          "two dumbbells and a chair",
          "dumbbells and a bench",
          "one kettlebell",
          "long band",
          "loop band and mat",
          "ankle weights and dumbbells");
  private static final List<String> LEVELS = List.of("beginner", "intermediate", "advanced");
  private static final List<Integer> MINUTES = List.of(10, 15, 20, 25, 30, 45);

  private final Catalogue catalogue;
  private final StringBuilder text = new StringBuilder();
  private final List<Judged> sessions = new ArrayList<>();

  private RandomAsks(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** Writes {@code random-asks.txt}. */
  public static void main(String[] args) throws IOException {
    RandomAsks asks = new RandomAsks(Catalogues.embedded());
    asks.random();
    asks.text.append("\nWhole body, two dumbbells: every big pattern\n");
    for (String level : LEVELS) {
      asks.plan("20 min, whole body, two dumbbells, " + level, false);
    }
    Reports.tell("random-asks.txt", asks.text.toString());
  }

  private void random() {
    Random random = new Random(SEED);
    for (int i = 0; i < ASKS; i++) {
      plan(
          MINUTES.get(random.nextInt(MINUTES.size()))
              + " min, "
              + REGIONS.get(random.nextInt(REGIONS.size()))
              + ", "
              + EQUIPMENT.get(random.nextInt(EQUIPMENT.size()))
              + ", "
              + LEVELS.get(random.nextInt(LEVELS.size())),
          true);
    }
    List<Judged> equipped =
        sessions.stream().filter(it -> !it.facts().problem().equipment().isEmpty()).toList();
    text.append(
        String.format(
            Locale.ROOT,
            "%nOf 100 places: staples where something is owned %.1f, last resorts %.1f (where"
                + " something is owned %.1f), without the owned equipment %.1f, of these where the"
                + " pattern could be loaded %.1f%n",
            mean(equipped, it -> it.merit().standing() == STAPLE),
            mean(sessions, it -> it.merit().standing() == Exercise.LAST_RESORT),
            mean(equipped, it -> it.merit().standing() == Exercise.LAST_RESORT),
            mean(equipped, it -> !it.loaded()),
            mean(equipped, it -> it.merit().couldBeLoaded())));
  }

  private static double mean(List<Judged> of, Predicate<Candidate> which) {
    return of.stream().mapToDouble(it -> Features.share(it, which)).average().orElse(0);
  }

  private void plan(String ask, boolean counts) {
    Judged session =
        ReferenceTable.judged(
            ReferenceTable.planned(
                Request.session(List.of(ask), catalogue, Path.of("")).problem(), catalogue),
            catalogue);
    if (counts) {
      sessions.add(session);
    }
    List<String> lacks = lacks(ask, session);
    text.append(ask)
        .append(lacks.isEmpty() ? "" : "  LACKS " + String.join(", ", lacks))
        .append(String.format("%n  %s%n", session.distinct()))
        .append(lastResorts(session));
  }

  private static String lastResorts(Judged session) {
    String ids =
        session.distinct().stream()
            .filter(it -> it.merit().standing() == Exercise.LAST_RESORT)
            .map(Candidate::toString)
            .collect(Collectors.joining(", "));
    return ids.isEmpty() ? "" : "  last resorts: " + ids + "\n";
  }

  /** What any coach would have put in. */
  private static List<String> lacks(String ask, Judged session) {
    Set<String> patterns = Features.of(session).patterns().keySet();
    List<String> lacks = new ArrayList<>();
    if (ask.contains("20 min, whole body, two dumbbells")) {
      for (String pattern :
          List.of(
              "squat",
              "hinge",
              "single-leg",
              "horizontal-push",
              "horizontal-pull",
              "vertical-push")) {
        need(patterns.contains(pattern), pattern, lacks);
      }
    }
    if (ask.contains("lower body")) {
      boolean hinge =
          session.places().stream()
              .anyMatch(it -> it.loaded() && Features.pattern(session, it).equals("hinge"));
      need(hinge || patterns.contains("bridge"), "bridge or loaded hinge", lacks);
      need(patterns.contains("single-leg"), "single-leg", lacks);
    }
    if (ask.contains("core")) {
      need(patterns.contains("anti-extension"), "plank or dead bug", lacks);
    }
    return lacks;
  }

  private static void need(boolean is, String what, List<String> lacks) {
    if (!is) {
      lacks.add(what);
    }
  }
}
