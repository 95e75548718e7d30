package counterset.typed;

import java.util.ArrayList;
import java.util.List;

/** What is found out about a text while it is read. Lives for one reading. */
final class Report {

  final List<Taken> lines = new ArrayList<>();
  final List<TypedFault> faults = new ArrayList<>();

  void taken(Source source, int start, int end, String as) {
    taken(source, start, end, "", as, "");
  }

  void taken(Source source, int start, int end, String place, String as, String exercise) {
    lines.add(
        new Taken(
            source.number(), source.column(start), source.typed(start, end), place, as, exercise));
  }

  void fault(Source source, int start, String message) {
    faults.add(new TypedFault(source.number(), source.column(start), message));
  }
}
