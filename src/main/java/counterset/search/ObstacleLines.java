package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** What a plan lacks and why, line by line as it is found. */
abstract class ObstacleLines {

  final Problem problem;
  final Plan plan;
  final Catalogue catalogue;
  final Outlook outlook;
  final Names names;
  final List<String> lines = new ArrayList<>();

  ObstacleLines(Plan plan, Catalogue catalogue, Outlook outlook) {
    this.problem = plan.problem();
    this.plan = plan;
    this.catalogue = catalogue;
    this.outlook = outlook;
    this.names = new Names(catalogue);
  }

  final List<String> lines() {
    return List.copyOf(lines);
  }

  /** All that rules out some exercises, as a phrase. */
  final String conflict(Collection<Exercise> exercises) {
    return String.join(", nor with ", outlook.wishes().conflicts(exercises));
  }
}
