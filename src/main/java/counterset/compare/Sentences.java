package counterset.compare;

import counterset.model.English;
import java.util.List;

/** What is said of one plan beside another of its length. */
record Sentences(Compared plan, Compared other, Audience audience) {

  /** What speaks for the plan and against it, and whom it suits. */
  String against() {
    Merits merits = Merits.of(plan, other);
    return "against option " + other.number() + ": " + balance(merits) + "." + suits(merits);
  }

  /** The same when the other was just set against this one: only what speaks for it. */
  String inReturn() {
    Merits merits = Merits.of(plan, other);
    if (!merits.gains().isEmpty()) {
      return "in return, " + English.list(merits.gains()) + "." + suits(merits);
    }
    if (merits.losses().isEmpty()) {
      return "no difference that counts." + suits(merits);
    }
    return "nothing better." + suits(merits);
  }

  private String suits(Merits merits) {
    List<String> clauses = audience.of(plan.plan().problem(), other.plan().problem());
    if (clauses.isEmpty() && merits.wants().isEmpty()) {
      boolean worse = merits.gains().isEmpty() && !merits.losses().isEmpty();
      return worse ? " Nothing speaks for it" + change() + "." : "";
    }
    return (merits.gains().isEmpty() ? " For clients who " : " Better for clients who ")
        + who(clauses, merits.wants())
        + ".";
  }

  /** Of one problem, a worse session may still be welcome for being another. */
  private String change() {
    Shared shared = Shared.of(plan, other);
    return Comparison.haveOneProblem(plan, other) && 2 * shared.exercises() <= shared.ofOne()
        ? " but a change: only "
            + shared.exercises()
            + " of its "
            + English.count(shared.ofOne(), "exercise")
            + (shared.exercises() == 1 ? " is" : " are")
            + " in option "
            + other.number()
        : "";
  }

  /** Gains, then losses. */
  static String balance(Merits merits) {
    if (merits.gains().isEmpty()) {
      return merits.losses().isEmpty()
          ? "no difference that counts"
          : English.list(merits.losses());
    }
    return English.list(merits.gains())
        + (merits.losses().isEmpty()
            ? ", and nothing worse"
            : ", but " + English.list(merits.losses()));
  }

  /** What clients have comes first, what they want makes it weigh more. */
  static String who(List<String> have, List<String> want) {
    String wants = "want " + English.list(want);
    return have.isEmpty()
        ? wants
        : English.list(have) + (want.isEmpty() ? "" : ", above all if they " + wants);
  }
}
