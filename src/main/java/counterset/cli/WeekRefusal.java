package counterset.cli;

import counterset.explain.WeekWords;
import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.WeekPlan;
import java.util.List;

/** Whether weeks can be handed out; says on standard error why not, or what they leave unmet. */
record WeekRefusal(Shell shell, List<WeekPlan> weeks, Catalogue catalogue) {

  /** Whether every session of every week can be led, and the weeks keep their rules. */
  boolean isFeasible() {
    return weeks.stream().allMatch(WeekPlan::canBeLed);
  }

  /** Why there is no week to hand out. */
  void explain() {
    for (WeekPlan week : weeks) {
      List<String> broken = new WeekWords(week, catalogue).brokenRules();
      if (!broken.isEmpty()) {
        shell.say(name(week) + "No feasible week: the best one found still breaks a rule.");
        broken.forEach(shell::say);
        shell.say("What would free it: other days or targets, or recovery as a wish.");
      }
      for (int i = 0; i < week.plans().size(); i++) {
        if (!week.plans().get(i).canBeLed()) {
          shell.say(name(week) + day(week, i) + ":");
          Explanation.ofRefusal(shell, week.plans().get(i), catalogue);
        }
      }
    }
  }

  /** What weeks leave unmet; nothing where they meet all wishes. */
  void unmetWishes() {
    for (WeekPlan week : weeks) {
      new WeekWords(week, catalogue).unmetWishes().forEach(line -> shell.say(name(week) + line));
      for (int i = 0; i < week.plans().size(); i++) {
        Plan plan = week.plans().get(i);
        if (plan.score().medium() < 0) {
          shell.say(name(week) + day(week, i) + ":");
          Explanation.ofUnmetWishes(shell, plan, catalogue);
        }
      }
    }
  }

  private String name(WeekPlan week) {
    return weeks.size() == 1 ? "" : "Week " + (weeks.indexOf(week) + 1) + ": ";
  }

  private static String day(WeekPlan week, int session) {
    return WeekWords.day(week.problem().sessions().get(session).day());
  }
}
