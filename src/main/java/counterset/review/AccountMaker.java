package counterset.review;

import counterset.bound.ScoreBound;
import counterset.explain.Accounts;
import counterset.explain.BoundWords;
import counterset.explain.DifferenceWords;
import counterset.explain.UnsuitedWords;
import counterset.model.At;
import counterset.model.Bound;
import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Exercise;
import counterset.model.Limitation;
import counterset.model.Plan;
import counterset.model.Superset;
import counterset.report.PlanAccount;
import counterset.report.PlanAccount.Kept;
import counterset.report.PlanAccount.Place;
import counterset.report.PlanAccount.RunnerUp;
import counterset.search.KeptOut;
import counterset.search.Narrowing;
import counterset.search.Replacement;
import counterset.search.Replacements;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts together all that explains a plan. */
public final class AccountMaker {

  private static final int RUNNERS_UP = 3;
  private static final int KEPT_OUT_SHOWN = 5;

  private final Plan plan;
  private final Catalogue catalogue;
  private final String version;
  private final Replacements replacements;

  /**
   * A maker of one account.
   *
   * @param version of this program
   */
  public AccountMaker(Plan plan, Catalogue catalogue, String version) {
    this.plan = plan;
    this.catalogue = catalogue;
    this.version = version;
    this.replacements = new Replacements(catalogue, version);
  }

  /** The account; this takes a while. */
  public PlanAccount account() {
    Optional<Bound> bound = ScoreBound.of(plan.problem(), catalogue).of(plan.score());
    return new PlanAccount(
        bound.map(plan::withBound).orElse(plan),
        Accounts.of(plan, catalogue),
        places(),
        KeptOut.of(plan, catalogue, version).stream().map(this::kept).toList(),
        narrowed(),
        limit(bound));
  }

  private String limit(Optional<Bound> bound) {
    if (!plan.score().feasible()) {
      return "No limit applies: this session breaks rules.";
    }
    return bound
        .map(known -> BoundWords.of(known, plan.score()))
        .orElse("Not known: some weights are too large to be added up.");
  }

  private List<Place> places() {
    List<Place> places = new ArrayList<>();
    for (Superset superset : plan.session().supersets()) {
      for (int position = 0; position < superset.exercises().size(); position++) {
        if (position > 0 && superset.isUnilateral()) {
          continue;
        }
        At at = new At(superset.number(), position);
        boolean isKept = Places.keeping(plan, at).isPresent();
        places.add(
            new Place(
                at,
                superset.exercises().get(position),
                isKept,
                isKept ? List.of() : runnersUp(at)));
      }
    }
    return places;
  }

  /** Those that break no more rules than the plan does. */
  private List<RunnerUp> runnersUp(At at) {
    return replacements.of(plan, at).stream()
        .filter(other -> other.hard() >= plan.score().hard())
        .limit(RUNNERS_UP)
        .map(this::runnerUp)
        .toList();
  }

  private RunnerUp runnerUp(Replacement other) {
    Plan with = replacements.plan(plan, other);
    return new RunnerUp(
        other.exercise(),
        other.partner(),
        with.score(),
        DifferenceWords.differences(plan, with, catalogue));
  }

  private Kept kept(KeptOut out) {
    Limitation limitation = out.limitation();
    List<String> first =
        out.exercises().stream().limit(KEPT_OUT_SHOWN).map(this::unsuited).toList();
    return new Kept(
        limitation.id(), limitation.name(), limitation.source(), out.exercises().size(), first);
  }

  private String unsuited(Exercise exercise) {
    return exercise.name()
        + " "
        + English.list(UnsuitedWords.of(exercise, plan.problem(), catalogue))
        + ".";
  }

  private List<String> narrowed() {
    Narrowing narrow = Narrowing.of(plan.problem(), catalogue);
    List<String> lines = new ArrayList<>();
    if (narrow.byEquipment() > 0) {
      lines.add(
          "Equipment: "
              + English.count(narrow.byEquipment(), "exercise")
              + " more with all equipment of the catalogue.");
    }
    if (narrow.byLevel() > 0) {
      lines.add(
          "Level "
              + plan.problem().level()
              + ": "
              + English.count(narrow.byLevel(), "exercise")
              + " more at the highest level.");
    }
    if (narrow.byExclusion() > 0) {
      lines.add("What you excluded: " + English.count(narrow.byExclusion(), "exercise") + " more.");
    }
    lines.add(
        English.count(narrow.left(), "exercise") + " for these targets are left to choose from.");
    return lines;
  }
}
