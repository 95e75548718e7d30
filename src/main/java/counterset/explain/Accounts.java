package counterset.explain;

import counterset.explain.Account.Line;
import counterset.explain.Account.Section;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Match;
import counterset.model.Plan;
import counterset.model.Superset;
import counterset.model.Track;
import counterset.score.Constraints;
import counterset.score.PlanConstraint;
import counterset.score.Told;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Gives account of every point of a plan. */
public final class Accounts {

  private static final Comparator<Line> LARGEST_FIRST =
      Comparator.comparing((Line line) -> Constraints.of(line.constraint()).level())
          .thenComparing(line -> -Math.abs(line.points()))
          .thenComparing(Line::places, Accounts::compare)
          .thenComparing(Line::constraint);

  private final Plan plan;
  private final Catalogue catalogue;
  private final MatchNames names;

  private Accounts(Plan plan, Catalogue catalogue) {
    this.plan = plan;
    this.catalogue = catalogue;
    this.names = new MatchNames(catalogue);
  }

  /** The account of a plan; what is switched off by a weight of 0 is left out. */
  public static Account of(Plan plan, Catalogue catalogue) {
    return new Accounts(plan, catalogue).account();
  }

  private Account account() {
    List<Section> sections = new ArrayList<>();
    Reasons reasons = new Reasons(plan, catalogue);
    for (Superset superset : plan.session().supersets()) {
      sections.add(
          section(
              Optional.of(superset.number()),
              title(superset),
              // The first reason is the pairing, which has a line of its own.
              reasons.of(superset).stream().skip(1).toList(),
              match -> superset(match).equals(Optional.of(superset.number()))));
    }
    sections.add(
        section(
            Optional.empty(),
            "The session as a whole",
            List.of(),
            match -> match.track().isEmpty() && superset(match).isEmpty()));
    TrackWords tracks = new TrackWords(catalogue);
    for (Track track : plan.tracks()) {
      sections.add(
          section(
              Optional.empty(),
              "Followers with " + tracks.of(track),
              List.of(),
              match -> match.track().equals(Optional.of(track.name()))));
    }
    sections.removeIf(section -> section.superset().isEmpty() && section.lines().isEmpty());
    return new Account(sections);
  }

  private Section section(
      Optional<Integer> superset, String title, List<String> notes, Predicate<Match> belongs) {
    List<Line> lines =
        plan.matches().stream()
            .filter(match -> match.points() != 0)
            .filter(belongs)
            .map(this::line)
            .sorted(LARGEST_FIRST)
            .toList();
    return new Section(superset, title, lines, notes);
  }

  private Line line(Match match) {
    PlanConstraint constraint = Constraints.of(match);
    return new Line(
        constraint.id(),
        constraint.level().id(),
        match.points(),
        match.places().stream().distinct().toList(),
        FaultWords.isFault(match)
            ? FaultWords.of(match, plan, catalogue)
            : constraint.said(Told.of(match, plan, names)));
  }

  /** The superset that a match is about, or that it leads out of; empty for the whole session. */
  private Optional<Integer> superset(Match match) {
    if (match.track().isPresent() || match.places().isEmpty()) {
      return Optional.empty();
    }
    int first = match.places().stream().mapToInt(At::superset).min().orElseThrow();
    int last = match.places().stream().mapToInt(At::superset).max().orElseThrow();
    boolean known = plan.session().supersets().stream().anyMatch(s -> s.number() == first);
    return known && last <= first + 1 ? Optional.of(first) : Optional.empty();
  }

  /** In the order of the session; what is about all of it comes first. */
  private static int compare(List<At> one, List<At> other) {
    for (int i = 0; i < Math.min(one.size(), other.size()); i++) {
      int order = one.get(i).compareTo(other.get(i));
      if (order != 0) {
        return order;
      }
    }
    return Integer.compare(one.size(), other.size());
  }

  private static String title(Superset superset) {
    List<String> names = superset.distinct().stream().map(Exercise::name).toList();
    return names.isEmpty()
        ? "not filled"
        : String.join(" + ", names) + (superset.isUnilateral() ? ", left then right" : "");
  }
}
