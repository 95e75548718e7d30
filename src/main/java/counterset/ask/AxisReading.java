package counterset.ask;

import java.util.List;
import java.util.Optional;

/**
 * How a value of an axis was read.
 *
 * @param value present if and only if there are no faults
 * @param faults all that is wrong, a sentence or two each
 */
public record AxisReading(Optional<AxisValue> value, List<String> faults) {

  public AxisReading {
    faults = List.copyOf(faults);
    if (value.isPresent() != faults.isEmpty()) {
      throw new IllegalArgumentException("A value is read, or there are faults, not both.");
    }
  }

  static AxisReading of(AxisValue value) {
    return new AxisReading(Optional.of(value), List.of());
  }

  static AxisReading fault(String fault) {
    return new AxisReading(Optional.empty(), List.of(fault));
  }
}
