package counterset.planning.scoring;

import counterset.model.Keep;
import counterset.planning.Candidate;
import counterset.planning.SessionFacts;
import counterset.planning.constraints.SessionConstraint;
import java.util.List;

/** The places that the coach keeps, and what it costs to have changed them. */
final class Kept {

  private final int[] places;
  private final String[] exercises;
  private final int weight;

  Kept(SessionFacts facts) {
    List<Keep> keeps = facts.problem().keep();
    places =
        keeps.stream()
            .mapToInt(
                keep -> (keep.at().superset() - 1) * facts.perSuperset() + keep.at().position())
            .toArray();
    exercises = keeps.stream().map(Keep::exercise).toArray(String[]::new);
    weight = SessionConstraint.KEPT_MOVED.weight(facts.problem());
  }

  int cost(Candidate[] now) {
    int cost = 0;
    for (int i = 0; i < places.length; i++) {
      boolean there =
          places[i] < now.length
              && now[places[i]] != null
              && now[places[i]].exercise().id().equals(exercises[i]);
      cost += there ? 0 : weight;
    }
    return cost;
  }
}
