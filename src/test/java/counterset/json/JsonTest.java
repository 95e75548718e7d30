package counterset.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class JsonTest {

  @Test
  void printsTwoSpacesALevel() {
    String text =
        "{\"a\":[1,2.5,{\"b\":null}],\"c\":{},\"d\":[],\"e\":\"\u00e9\\n\",\"f\":true,\"g\":12345678901234567890}";
    String pretty = Json.pretty(JsonDocument.parse("x", text).tree());
    assertThat(pretty)
        .isEqualTo(
            """
            {
              "a": [
                1,
                2.5,
                {
                  "b": null
                }
              ],
              "c": {},
              "d": [],
              "e": "\u00e9\\n",
              "f": true,
              "g": 12345678901234567890
            }
            """);
    assertThat(Json.line(JsonDocument.parse("x", pretty).tree())).isEqualTo(text);
  }

  @Test
  void placesOfValues() {
    JsonDocument document = JsonDocument.parse("x", "{\n\"a\":\n[1,\n2], \"x/y~\": 3\n}");
    assertThat(document.line("")).hasValue(1);
    assertThat(document.line("/a")).hasValue(2);
    assertThat(document.line("/a/1")).hasValue(4);
    assertThat(document.line("/a/7/b")).hasValue(2);
    assertThat(document.line("/x~1y~0")).hasValue(4);
    assertThat(JsonDocument.of("x", document.tree()).line("/a")).isEqualTo(OptionalInt.empty());
  }

  @Test
  void violationIsOneLine() {
    assertThat(new Violation("a.json", "/b", OptionalInt.of(3), "No."))
        .hasToString("a.json:3 /b: No.");
    assertThat(Violation.of("a.json", "No.")).hasToString("a.json: No.");
    assertThat(
            new InvalidInputException(List.of(Violation.of("a", "No."), Violation.of("b", "No."))))
        .hasMessage("a: No.\nb: No.");
  }

  @Test
  void shownValuesStayOnOneLineAndShort() {
    assertThat(Shown.of("a\nb\u202e")).isEqualTo("a\\u000ab\\u202e");
    assertThat(Shown.of("x".repeat(100))).isEqualTo("x".repeat(60) + "...");
  }

  @Test
  void cursorTurnsWrongTypesIntoFaultsAndGoesOn() {
    Faults faults =
        new Faults(
            JsonDocument.parse("x", "{\"a\": 1.5,\n\"b\": \"t\",\n\"c\": {},\n\"d\": 20.0}"));
    Cursor cursor = Cursor.at(faults, "");
    assertThat(cursor.field("b").integer()).isEmpty();
    assertThat(cursor.field("a").integer()).isEmpty();
    assertThat(cursor.field("c").elements()).isEmpty();
    assertThat(cursor.field("d").integer()).hasValue(20);
    assertThat(cursor.field("e").field("f").text()).isEmpty();
    assertThat(faults.list())
        .extracting(Violation::toString)
        .containsExactly(
            "x:1 /a: The a (1.5) must be a whole number.",
            "x:2 /b: The b (t) must be a whole number.",
            "x:3 /c: The c (an object) must be a list.");
  }
}
