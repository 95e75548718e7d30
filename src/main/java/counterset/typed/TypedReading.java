package counterset.typed;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How a text was read.
 *
 * @param session present if and only if there are no faults
 * @param lines what each line was taken for, in the order of the text
 * @param faults all that is wrong, in the order of the text
 */
public record TypedReading(
    Optional<TypedSession> session, List<Taken> lines, List<TypedFault> faults) {

  public TypedReading {
    lines =
        lines.stream()
            .sorted(Comparator.comparingInt(Taken::line).thenComparingInt(Taken::column))
            .toList();
    faults =
        faults.stream()
            .distinct()
            .sorted(Comparator.comparingInt(TypedFault::line).thenComparingInt(TypedFault::column))
            .toList();
    if (session.isPresent() != faults.isEmpty()) {
      throw new IllegalArgumentException("A text is read into a session or into faults, not both.");
    }
  }
}
