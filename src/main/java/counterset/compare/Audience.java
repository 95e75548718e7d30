package counterset.compare;

import counterset.explain.English;
import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.Owned;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Whom one problem suits and another does not, by what the two ask. */
final class Audience {

  private final Catalogue catalogue;

  Audience(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** Clauses after "clients who": {@code own ankle weights}, {@code have only 15 minutes}. */
  List<String> of(Problem problem, Problem other) {
    List<String> clauses = new ArrayList<>();
    if (problem.minutes() != other.minutes()) {
      clauses.add(
          "have "
              + (problem.minutes() < other.minutes() ? "only " : "")
              + English.count(problem.minutes(), "minute"));
    }
    equipment(problem, other, clauses);
    limitations(problem, other, clauses);
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
      clauses.add("own just what it lists");
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

  private void limitations(Problem problem, Problem other, List<String> clauses) {
    List<String> more = limits(problem, other);
    List<String> less = limits(other, problem);
    if (!more.isEmpty()) {
      clauses.add("need it to suit " + English.list(more));
    }
    if (!less.isEmpty()) {
      clauses.add("need no regard for " + English.list(less));
    }
  }

  private List<String> limits(Problem problem, Problem other) {
    return problem.limitations().stream()
        .filter(id -> !other.limitations().contains(id))
        .map(id -> '"' + English.lower(catalogue.limitations().get(id).name()) + '"')
        .toList();
  }
}
