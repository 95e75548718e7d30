package counterset.compare;

import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Equipment;
import counterset.model.Owned;
import counterset.model.Problem;
import counterset.model.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Whom one problem suits and another of the same minutes does not, by what the two ask. */
final class Audience {

  /** More names than these are only counted. */
  private static final int MOST_NAMED = 3;

  private final Catalogue catalogue;

  Audience(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** Clauses after "clients who": {@code own ankle weights}, {@code train at level 1}. */
  List<String> of(Problem problem, Problem other) {
    List<String> clauses = new ArrayList<>();
    targets(problem, other, clauses);
    equipment(problem, other, clauses);
    if (problem.level() != other.level()) {
      clauses.add("train at level " + problem.level());
    }
    return clauses;
  }

  private void equipment(Problem problem, Problem other, List<String> clauses) {
    List<String> more = only(problem, other);
    List<String> less = only(other, problem);
    if (!more.isEmpty()) {
      clauses.add("own " + English.list(more));
    }
    if (!less.isEmpty()) {
      clauses.add("have no " + String.join(" or ", less.stream().map(Audience::bare).toList()));
    }
    if (more.isEmpty() && less.isEmpty() && !problem.equipment().equals(other.equipment())) {
      clauses.add("have just the equipment that it lists");
    }
  }

  private List<String> only(Problem problem, Problem other) {
    Set<String> there = other.equipment().stream().map(Owned::id).collect(Collectors.toSet());
    return problem.equipment().stream()
        .filter(owned -> !there.contains(owned.id()))
        .map(this::name)
        .distinct()
        .toList();
  }

  private String name(Owned owned) {
    Equipment equipment = catalogue.equipment().get(owned.id());
    String name = English.lower(equipment.name());
    return name.endsWith("s")
        ? name
        : owned.count() > 1 ? English.plural(name) : English.indefinite(name);
  }

  private static String bare(String name) {
    return name.replaceFirst("^an? ", "");
  }

  /** Which clients a problem has regard for: {@code with "sore knees" and "no floor"}. */
  String limits(Problem problem) {
    return problem.limitations().isEmpty()
        ? "without limitations"
        : "with "
            + English.list(
                problem.limitations().stream()
                    .map(id -> '"' + English.lower(catalogue.limitations().get(id).name()) + '"')
                    .toList());
  }

  private void targets(Problem problem, Problem other, List<String> clauses) {
    Set<String> there = other.targets().stream().map(Target::muscle).collect(Collectors.toSet());
    List<String> more =
        problem.targets().stream()
            .map(Target::muscle)
            .filter(id -> !there.contains(id))
            .map(id -> English.lower(catalogue.muscles().get(id).name()))
            .toList();
    if (more.size() > MOST_NAMED) {
      List<String> some = new ArrayList<>(more.subList(0, MOST_NAMED));
      some.add((more.size() - MOST_NAMED) + " more");
      clauses.add("train " + English.list(some));
    } else if (!more.isEmpty()) {
      clauses.add("train " + English.list(more));
    }
  }
}
