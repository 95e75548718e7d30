package counterset.cli;

import counterset.ask.AskTopic;
import counterset.ask.Axis;
import counterset.ask.AxisReader;
import counterset.ask.AxisReading;
import counterset.ask.AxisValue;
import counterset.compare.CompareEntry;
import counterset.intake.Assumptions;
import counterset.model.Catalogue;
import counterset.model.Keep;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads how one problem is to be varied, {@code minutes=15,20,30}, and makes the problems. */
final class Variations {

  /** More axes make a table that nobody reads. */
  private static final int MOST_AXES = 2;

  private final AxisReader reader;
  private final Catalogue catalogue;
  private final List<String> faults = new ArrayList<>();
  private final List<List<AxisValue>> axes = new ArrayList<>();

  private Variations(Catalogue catalogue) {
    this.reader = new AxisReader(catalogue);
    this.catalogue = catalogue;
  }

  /** Reads all axes; their faults are found in {@link #faults()}. */
  static Variations read(List<String> axes, Catalogue catalogue) {
    Variations variations = new Variations(catalogue);
    Set<Axis> seen = EnumSet.noneOf(Axis.class);
    axes.forEach(axis -> variations.axis(axis, seen));
    if (axes.size() > MOST_AXES) {
      variations.faults.add(
          "--vary (" + axes.size() + " times) is for one axis or two. Leave some out.");
    }
    return variations;
  }

  List<String> faults() {
    return faults;
  }

  /** Whether this is one of the axes. */
  boolean varies(Axis axis) {
    return axes.stream().flatMap(List::stream).anyMatch(value -> value.axis() == axis);
  }

  private void axis(String text, Set<Axis> seen) {
    int equals = text.indexOf('=');
    String name = equals < 0 ? text.strip() : text.substring(0, equals).strip();
    Axis axis = Axis.of(name).orElse(null);
    if (axis == null) {
      faults.add(
          "--vary ("
              + name
              + ") is no axis. Maybe one of "
              + Axis.names()
              + ", as in --vary minutes=15,20,30.");
    } else if (equals < 0) {
      faults.add("--vary " + name + " has no values. Maybe " + name + "=" + quoted(axis) + ".");
    } else if (!seen.add(axis)) {
      faults.add("--vary " + name + " comes twice. Put all its values into one.");
    } else {
      values(axis, text.substring(equals + 1));
    }
  }

  private static String quoted(Axis axis) {
    return axis.example().matches("[0-9a-z,/-]+") ? axis.example() : '"' + axis.example() + '"';
  }

  private void values(Axis axis, String list) {
    List<AxisValue> values = new ArrayList<>();
    for (String text : axis.values(list)) {
      AxisReading reading = reader.read(axis, text);
      String where = "--vary " + axis.id() + " (" + text + "): ";
      reading.faults().forEach(fault -> faults.add(where + fault));
      reading
          .value()
          .ifPresent(
              value -> {
                if (values.stream().anyMatch(other -> other.phrase().equals(value.phrase()))) {
                  faults.add(where + "This value comes twice. Leave one out.");
                }
                values.add(value);
              });
    }
    axes.add(values);
  }

  /**
   * The full grid, the values of the last axis changing first.
   *
   * @param ask whether the problem was read from an ask, which is its label
   */
  List<CompareEntry> of(CompareEntry base, boolean ask) {
    boolean warmUpOpen = ask && reader.leavesWarmUpOpen(base.label());
    List<CompareEntry> entries = new ArrayList<>();
    for (List<AxisValue> values : grid()) {
      String label = values.stream().map(AxisValue::phrase).collect(Collectors.joining(", "));
      String title = base.problem().title() + " (" + label + ")";
      Problem varied = AxisValue.varied(base.problem(), values, title, warmUpOpen);
      entries.add(
          CompareEntry.planned(
              label,
              ask ? Assumptions.again(base.label(), varied, changed(values), catalogue) : varied));
    }
    return entries;
  }

  private static Set<AskTopic> changed(List<AxisValue> values) {
    return values.stream().anyMatch(value -> value.axis() == Axis.ROUNDS)
        ? EnumSet.of(AskTopic.ROUNDS)
        : EnumSet.noneOf(AskTopic.class);
  }

  /** What is wrong with the problems that were made, where values contradict what else is asked. */
  List<String> faults(List<CompareEntry> entries) {
    List<String> wrong = new ArrayList<>();
    for (CompareEntry entry : entries) {
      Problem problem = entry.problem();
      int positions = problem.clock().perSuperset();
      if (positions == 1 && varies(Axis.PAIRING)) {
        wrong.add(
            "--vary ("
                + entry.label()
                + "): Straight sets have no pairing. Leave out one of the two.");
      }
      for (Keep keep : problem.keep()) {
        if (keep.at().position() >= positions) {
          wrong.add(
              "--vary ("
                  + entry.label()
                  + "): "
                  + keep.at()
                  + " is kept, but then a superset has "
                  + positions
                  + (positions == 1 ? " position." : " positions."));
        }
      }
    }
    return wrong;
  }

  /** What is varied, a line each. */
  List<String> notes() {
    return axes.stream()
        .map(
            values ->
                "Varied: "
                    + values.get(0).axis().id()
                    + ": "
                    + values.stream().map(AxisValue::phrase).collect(Collectors.joining("; ")))
        .toList();
  }

  /** How many problems it makes. */
  int size() {
    return axes.stream().mapToInt(List::size).reduce(1, Math::multiplyExact);
  }

  private List<List<AxisValue>> grid() {
    List<List<AxisValue>> grid = List.of(List.of());
    for (List<AxisValue> axis : axes) {
      List<List<AxisValue>> longer = new ArrayList<>();
      for (List<AxisValue> start : grid) {
        for (AxisValue value : axis) {
          List<AxisValue> both = new ArrayList<>(start);
          both.add(value);
          longer.add(both);
        }
      }
      grid = longer;
    }
    return grid;
  }
}
