package counterset.catalogue;

import counterset.json.Cursor;

/** A value of a catalogue and the place where it is written. */
record Entry<T>(Cursor at, T value) {

  Cursor at(String field) {
    return at.field(field);
  }
}
