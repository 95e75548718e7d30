package counterset.ask;

import java.util.Optional;

/** Something that an ask may say once. */
final class Slot<T> {

  private final String plural;
  private T value;
  private Span span;

  /** The name is the plural of what it holds. */
  Slot(String plural) {
    this.plural = plural;
  }

  void set(T wanted, Span where, AskDraft draft) {
    if (value != null && !value.equals(wanted)) {
      draft.fault(
          where,
          "Two different "
              + plural
              + ": "
              + span.quoted()
              + " and "
              + where.quoted()
              + ". Keep one of them.");
      return;
    }
    value = wanted;
    span = where;
  }

  Optional<T> value() {
    return Optional.ofNullable(value);
  }

  boolean isSet() {
    return value != null;
  }

  T or(T standard) {
    return value == null ? standard : value;
  }

  Span span() {
    return span;
  }
}
