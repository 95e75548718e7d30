package counterset.review;

import counterset.explain.DifferenceWords;
import counterset.explain.FollowWords;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.report.SwapChoice;
import counterset.report.SwapList;
import counterset.search.Replacement;
import counterset.search.Replacements;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The replacements at one place of a plan, those that keep its rules apart from the others. */
public final class SwapChoices {

  private static final int SHOWN = 10;
  private static final int BREAKING_SHOWN = 5;

  private final Plan plan;
  private final At at;
  private final Catalogue catalogue;
  private final Replacements replacements;
  private final List<Replacement> good;
  private final List<Replacement> breaking;

  /**
   * The replacements.
   *
   * @param at a place where something stands
   * @param version of this program
   */
  public SwapChoices(Plan plan, At at, Catalogue catalogue, String version) {
    this.plan = plan;
    this.at = at;
    this.catalogue = catalogue;
    this.replacements = new Replacements(catalogue, version);
    List<Replacement> all = replacements.of(plan, at);
    this.good = all.stream().filter(this::keepsRules).toList();
    this.breaking = all.stream().filter(replacement -> !keepsRules(replacement)).toList();
  }

  /** Whether no rule is broken that the plan keeps. */
  private boolean keepsRules(Replacement replacement) {
    return replacement.hard() >= plan.score().hard();
  }

  /** How many can be taken. */
  public int size() {
    return good.size();
  }

  /** Whether the session with the best of them keeps every rule. */
  public boolean anyIsFeasible() {
    return !good.isEmpty() && good.get(0).hard() >= 0;
  }

  /** One by its number in the list, from 1. */
  public Replacement number(int number) {
    return good.get(number - 1);
  }

  /** One that keeps the rules. */
  public Optional<Replacement> of(Exercise exercise) {
    return find(good, exercise);
  }

  /** One that breaks a rule that the plan keeps. */
  public Optional<Replacement> breaking(Exercise exercise) {
    return find(breaking, exercise);
  }

  private static Optional<Replacement> find(List<Replacement> list, Exercise exercise) {
    return list.stream().filter(it -> it.exercise().equals(exercise)).findFirst();
  }

  /** The plan with one of them. */
  public Plan with(Replacement replacement) {
    return replacements.plan(plan, replacement);
  }

  /**
   * The list to be shown. Its plans are put together over the cores, since a class may have
   * hundreds.
   *
   * @param all whether nothing is left out
   */
  public SwapList list(boolean all) {
    List<Replacement> shown = good.subList(0, all ? good.size() : Math.min(SHOWN, good.size()));
    int broken = all ? breaking.size() : Math.min(BREAKING_SHOWN, breaking.size());
    return new SwapList(
        plan,
        at,
        Places.standing(plan, at),
        IntStream.range(0, shown.size())
            .parallel()
            .mapToObj(i -> choice(Optional.of(i + 1), shown.get(i)))
            .toList(),
        good.size(),
        breaking.subList(0, broken).parallelStream()
            .map(it -> choice(Optional.empty(), it))
            .toList(),
        breaking.size());
  }

  private SwapChoice choice(Optional<Integer> number, Replacement replacement) {
    Plan after = with(replacement);
    return new SwapChoice(
        number,
        replacement.exercise(),
        replacement.places(),
        replacement.partner(),
        after.score(),
        DifferenceWords.differences(plan, after, catalogue),
        FollowWords.of(plan, after, at, catalogue));
  }
}
