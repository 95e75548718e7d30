package counterset.report;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.Superset;
import counterset.search.SessionPlanner;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** A catalogue and a plan in which every text of an exercise tries to be more than text. */
public final class Hostile {

  /** What each text begins with. */
  public static final String MARK =
      "=1+1 <script>alert('x')</script> \"quoted\" | *bold* --> [a](b) &amp; \\n, ; ` # ";

  private Hostile() {}

  /** The catalogue. */
  public static Catalogue catalogue() {
    Catalogue plain = Plans.CATALOGUE;
    return Catalogue.of(
        List.copyOf(plain.muscles().values()),
        List.copyOf(plain.equipment().values()),
        List.copyOf(plain.limitations().values()),
        plain.exercises().values().stream().map(Hostile::exercise).toList());
  }

  /** The plan, under a title of the same kind. */
  public static Plan plan() {
    Plan plain = Plans.legs();
    Catalogue catalogue = catalogue();
    UnaryOperator<Exercise> hostile = exercise -> catalogue.exercises().get(exercise.id());
    List<Superset> supersets = new ArrayList<>();
    for (Superset superset : plain.session().supersets()) {
      supersets.add(
          new Superset(superset.number(), superset.exercises().stream().map(hostile).toList()));
    }
    Session session =
        new Session(
            plain.session().warmUp().stream().map(hostile).toList(),
            supersets,
            plain.session().coolDown().stream().map(hostile).toList());
    return new SessionPlanner(catalogue, "test")
        .score(titled(plain.problem()), session, new SolverNote(1, "none", "test", 0, true));
  }

  private static Problem titled(Problem plain) {
    return plain.toBuilder().title(MARK + plain.title()).build();
  }

  private static Exercise exercise(Exercise plain) {
    return plain.toBuilder()
        .name(MARK + plain.name())
        .setup(MARK + plain.setup())
        .cues(plain.cues().stream().map(MARK::concat).toList())
        .faults(plain.faults().stream().map(MARK::concat).toList())
        .build();
  }
}
