/**
 * Reading and writing JSON, the schema validator, and faults with their places.
 *
 * <p>Knows JSON, not sessions. A fault of a file is a {@link counterset.json.Violation}; all those
 * of one run travel in one {@link counterset.json.InvalidInputException}. Trees are read through
 * {@link counterset.json.Cursor} rather than bound by reflection, and without Jackson's object
 * mapper, which keeps the start of a command short. May depend on {@code counterset.model}, Jackson
 * and the schema library (JSON Schema draft 2020-12).
 */
package counterset.json;
