package counterset.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.report.ClassPlans;
import counterset.report.Plans;
import counterset.report.json.PlanJson;

/** The file of a class with three tracks, written by hand so that no search can change it. */
final class ClassPlan {

  private ClassPlan() {}

  /** The whole plan file, afresh. */
  static ObjectNode whole() {
    return PlanJson.write(ClassPlans.good(), Plans.CATALOGUE);
  }
}
