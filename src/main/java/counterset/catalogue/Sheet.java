package counterset.catalogue;

import counterset.json.Cursor;
import counterset.json.Faults;
import counterset.json.JsonDocument;
import counterset.json.Schemas;
import counterset.json.Violation;
import java.util.List;
import java.util.function.Function;

/**
 * One file of a catalogue.
 *
 * @param ids all that have an id, faulty or not, so that references to a faulty value are not
 *     reported as well
 * @param entries those without faults by the schema
 */
record Sheet<T>(Faults faults, List<Entry<String>> ids, List<Entry<T>> entries) {

  /** Reads a document after the schema has looked at it. */
  static <T> Sheet<T> validated(JsonDocument document, String schema, Function<Cursor, T> reader) {
    Faults faults = new Faults(document);
    faults.settle(Schemas.validate(document, schema));
    return read(faults, reader);
  }

  /** Reads a document that is known to fit the schema. */
  static <T> Sheet<T> trusted(JsonDocument document, Function<Cursor, T> reader) {
    return read(new Faults(document), reader);
  }

  List<T> values() {
    return entries.stream().map(Entry::value).toList();
  }

  List<Violation> violations() {
    return faults.list();
  }

  private static <T> Sheet<T> read(Faults faults, Function<Cursor, T> reader) {
    List<Cursor> elements = Cursor.at(faults, "").elements();
    List<Entry<String>> ids =
        elements.stream()
            .map(element -> element.field("id"))
            .flatMap(id -> id.text().map(text -> new Entry<>(id, text)).stream())
            .toList();
    List<Entry<T>> entries =
        elements.stream()
            .filter(element -> !element.isFaulty())
            .map(element -> new Entry<>(element, reader.apply(element)))
            .toList();
    return new Sheet<>(faults, ids, entries);
  }
}
