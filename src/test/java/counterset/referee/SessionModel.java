package counterset.referee;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToIntFunction;

/** A session of one problem as a mixed-integer model: its rules are constraints. */
final class SessionModel {

  private final CpModel model = new CpModel();
  private final Problem problem;
  private final Request request;
  private final Choices choices;
  private final Objective objective;
  private final Sequence sequence;
  private final Work work;
  private final int supersets;

  /**
   * Builds the model.
   *
   * @param exercises that may stand in a place; those that break a rule by themselves are left out
   * @param session null, or the only session that the model is to allow, by superset and position,
   *     null for a hole
   */
  SessionModel(
      Problem problem,
      Catalogue catalogue,
      List<Exercise> exercises,
      List<List<Exercise>> session) {
    this.problem = problem;
    this.supersets = supersetsThatFit(problem);
    Weights weights = new Weights(problem);
    this.request = new Request(problem, catalogue, supersets);
    this.choices =
        new Choices(
            request,
            exercises.stream()
                .filter(new Rules(problem, catalogue)::allow)
                .filter(exercise -> request.candidate(exercise.id()).isPresent())
                .toList());
    this.objective = new Objective(weights);
    Handover handover = new Handover(choices, weights);
    FillingCost cost = new FillingCost(request, weights, handover);
    Fillings fillings = new Fillings(problem, choices.all(), cost);
    this.sequence = new Sequence(model, problem, objective, handover, cost);
    if (session == null) {
      sequence.lay(
          supersets,
          choices.all().size(),
          fillings::of,
          superset ->
              problem.keep().stream().anyMatch(keep -> keep.at().superset() == superset + 1));
    } else {
      sequence.lay(
          supersets,
          choices.all().size(),
          superset -> only(session.get(superset), fillings),
          superset -> session.get(superset).stream().anyMatch(Objects::nonNull));
    }
    this.work = new Work(model, choices.all(), sequence.layers());
    charge(catalogue, weights);
    if (isBroken(session)) {
      model.addBoolOr(new BoolVar[0]);
    }
  }

  private List<Filling> only(List<Exercise> places, Fillings fillings) {
    List<Choice> chosen = new ArrayList<>();
    for (Exercise exercise : places) {
      Optional<Choice> choice =
          choices.all().stream().filter(c -> c.exercise().equals(exercise)).findFirst();
      if (exercise != null && choice.isEmpty()) {
        return List.of();
      }
      chosen.add(choice.orElse(null));
    }
    return chosen.stream().allMatch(Objects::isNull) ? List.of() : fillings.of(chosen);
  }

  private void charge(Catalogue catalogue, Weights weights) {
    int positions = request.places();
    Tastes tastes = new Tastes(problem, catalogue, weights);
    for (Choice choice : choices.all()) {
      objective.earn(work.done(choice), tastes.points(choice));
    }
    sequence.chargeFloorTrips(positions * problem.clock().rounds());
    if (request.isSharedByMuscle()) {
      new Volume(model, problem, objective, work, positions).charge();
    }
    new Coverage(model, request, objective, work).charge();
    new HeavyFirst(model, sequence.layers(), request.perSuperset(), !request.isForUpperBody())
        .charge(objective);
    new Wishes(model, problem, catalogue, objective).charge(sequence.layers(), work);
    new Whole(model, request, objective, sequence.layers(), work).charge();
    new Course(model, request, objective, sequence.layers()).charge();
  }

  /** Rules that no filling sees: the clock, and places to keep that do not exist or are changed. */
  private boolean isBroken(List<List<Exercise>> session) {
    Intervals clock = problem.clock();
    return clock.getReady() + clock.warmUp() + clock.coolDown() > 60 * problem.minutes()
        || problem.keep().stream()
            .anyMatch(
                keep ->
                    keep.at().superset() > supersets
                        || keep.at().position() >= clock.perSuperset()
                        || session != null
                            && !session.get(keep.at().superset() - 1).stream()
                                .map(e -> e == null ? "" : e.id())
                                .toList()
                                .get(keep.at().position())
                                .equals(keep.exercise()));
  }

  /** The largest number whose session is not longer than the cap, by trying. */
  static int supersetsThatFit(Problem problem) {
    Intervals clock = problem.clock();
    int round = clock.perSuperset() * clock.work() + (clock.perSuperset() - 1) * clock.between();
    int number = 0;
    while (true) {
      int rounds = (number + 1) * clock.rounds();
      int seconds =
          clock.getReady()
              + clock.warmUp()
              + rounds * round
              + (rounds - 1) * clock.rest()
              + clock.coolDown();
      if (seconds > 60 * problem.minutes()) {
        return number;
      }
      number++;
    }
  }

  CpModel cp() {
    return model;
  }

  LinearExpr medium() {
    return objective.medium();
  }

  LinearExpr soft() {
    return objective.soft();
  }

  /** All that has to be known to tell the session. */
  List<BoolVar> decisions() {
    return sequence.layers().stream().flatMap(layer -> layer.chosen().stream()).toList();
  }

  /** The exercises by superset and position, null for a hole. */
  List<List<Exercise>> places(ToIntFunction<BoolVar> value) {
    List<List<Exercise>> places = new ArrayList<>();
    for (Layer layer : sequence.layers()) {
      for (int i = 0; i < layer.fillings().size(); i++) {
        if (value.applyAsInt(layer.chosen().get(i)) == 1) {
          places.add(layer.fillings().get(i).exercises());
        }
      }
    }
    return places;
  }

  /** A session to begin with, as many supersets as fit the clock; the last may be empty. */
  List<List<Exercise>> greedy() {
    List<List<Exercise>> session =
        new ArrayList<>(new Greedy(problem, sequence::canFollow).session(sequence.layers()));
    while (session.size() < supersets) {
      session.add(Collections.nCopies(problem.clock().perSuperset(), null));
    }
    return session;
  }

  /**
   * Hints at a session.
   *
   * @param session exercises by superset and position, null for a hole; supersets that it does not
   *     have are empty
   */
  void hint(List<List<Exercise>> session) {
    for (int superset = 0; superset < supersets; superset++) {
      hint(
          sequence.layers().get(superset),
          superset < session.size()
              ? session.get(superset)
              : Collections.nCopies(request.perSuperset(), null));
    }
  }

  /** Several fillings hold the same exercises, if equipment can be on that they do not need. */
  private void hint(Layer layer, List<Exercise> exercises) {
    List<BoolVar> same = new ArrayList<>();
    for (int i = 0; i < layer.fillings().size(); i++) {
      if (layer.fillings().get(i).exercises().equals(exercises)) {
        same.add(layer.chosen().get(i));
      } else {
        model.addHint(layer.chosen().get(i), false);
      }
    }
    if (same.size() == 1) {
      model.addHint(same.get(0), true);
    }
  }

  Verdict.Size size() {
    return new Verdict.Size(choices.all().size(), supersets, decisions().size(), sequence.arcs());
  }
}
