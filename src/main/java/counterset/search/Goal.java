package counterset.search;

import counterset.model.Plan;

/** What a plan falls short of. */
enum Goal {
  /** It breaks a rule, or has no work in it. */
  HARD {
    @Override
    int shortfall(Outlook outlook) {
      return outlook.hardShortfall();
    }

    @Override
    int shortfall(Plan plan) {
      return -plan.score().hard() + (plan.totals().supersets() == 0 ? 1 : 0);
    }
  },
  /** It keeps every rule and leaves a wish unmet. */
  MEDIUM {
    @Override
    int shortfall(Outlook outlook) {
      return outlook.mediumShortfall() + outlook.hardShortfall();
    }

    @Override
    int shortfall(Plan plan) {
      return HARD.shortfall(plan) > 0 ? Integer.MAX_VALUE : -plan.score().medium();
    }
  };

  /** By how much every plan of a problem must fall short, at least. */
  abstract int shortfall(Outlook outlook);

  /** By how much a plan falls short; 0 if it does not. */
  abstract int shortfall(Plan plan);

  static Goal of(Plan plan) {
    return HARD.shortfall(plan) > 0 ? HARD : MEDIUM;
  }
}
