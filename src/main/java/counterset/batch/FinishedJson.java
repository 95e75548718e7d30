package counterset.batch;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.batch.Outcome.Figures;
import counterset.json.Cursor;
import counterset.json.Faults;
import counterset.json.InvalidInputException;
import counterset.json.Json;
import counterset.json.JsonDocument;
import java.util.Optional;

/** Finished files as lines of a manifest, and back; outcomes as JSON. */
public final class FinishedJson {

  private FinishedJson() {}

  static String line(Finished finished) {
    ObjectNode json = Json.object().put("fingerprint", finished.fingerprint());
    json.setAll(write(finished.outcome()));
    return Json.line(json);
  }

  /** Reads a line; empty for one that was cut short or that is of another version. */
  static Optional<Finished> read(String line) {
    try {
      Faults faults = new Faults(JsonDocument.parse("manifest", line));
      Finished finished = read(Cursor.at(faults, ""));
      faults.throwIfAny();
      return Optional.of(finished);
    } catch (InvalidInputException | java.util.NoSuchElementException e) {
      return Optional.empty();
    }
  }

  private static Finished read(Cursor at) {
    Cursor score = at.field("score");
    Optional<Figures> figures =
        score.isPresent()
            ? Optional.of(
                new Figures(
                    number(score, "hard"),
                    number(score, "medium"),
                    number(score, "soft"),
                    number(at, "seconds"),
                    number(at, "minutes"),
                    number(at, "covered"),
                    number(at, "targets")))
            : Optional.empty();
    return new Finished(
        at.field("fingerprint").text().orElseThrow(),
        new Outcome(
            at.field("file").text().orElseThrow(),
            at.field("status").constant(Status.class).orElseThrow(),
            figures,
            at.field("note").text().orElse(""),
            at.field("faults").texts()));
  }

  private static int number(Cursor at, String name) {
    return at.field(name).integer().orElseThrow();
  }

  /** An outcome; only what applies is present. */
  public static ObjectNode write(Outcome outcome) {
    ObjectNode json =
        Json.object().put("file", outcome.file()).put("status", outcome.status().id());
    outcome
        .figures()
        .ifPresent(
            figures -> {
              json.putObject("score")
                  .put("hard", figures.hard())
                  .put("medium", figures.medium())
                  .put("soft", figures.soft());
              json.put("seconds", figures.seconds())
                  .put("minutes", figures.minutes())
                  .put("covered", figures.covered())
                  .put("targets", figures.targets());
            });
    if (!outcome.note().isEmpty()) {
      json.put("note", outcome.note());
    }
    if (!outcome.faults().isEmpty()) {
      ArrayNode faults = json.putArray("faults");
      outcome.faults().forEach(faults::add);
    }
    return json;
  }
}
