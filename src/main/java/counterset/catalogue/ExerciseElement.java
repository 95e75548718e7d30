package counterset.catalogue;

import static counterset.catalogue.Elements.constant;
import static counterset.catalogue.Elements.integer;
import static counterset.catalogue.Elements.set;
import static counterset.catalogue.Elements.text;

import counterset.json.Cursor;
import counterset.model.Exercise;
import counterset.model.Load;
import counterset.model.Met;
import counterset.model.Need;
import counterset.model.Part;
import counterset.model.Position;
import counterset.model.Sides;
import java.util.OptionalInt;

/** Builds an exercise from an element that fits its schema. */
final class ExerciseElement {

  private ExerciseElement() {}

  static Exercise read(Cursor at) {
    return new Exercise(
        text(at, "id"),
        text(at, "name"),
        at.field("names").texts(),
        constant(at, "part", Part.class),
        text(at, "pattern"),
        text(at, "family"),
        at.field("variantOf").text(),
        at.field("multiJoint").bool().orElse(false),
        integer(at, "intensity"),
        integer(at, "level"),
        set(at, "primary"),
        set(at, "secondary"),
        constant(at, "sides", Sides.class),
        constant(at, "position", Position.class),
        at.field("needs").elements().stream().map(ExerciseElement::need).toList(),
        set(at, "allowsWorn"),
        Elements.demand(at.field("demand")),
        text(at, "demandSource"),
        set(at, "traits"),
        met(at.field("met")),
        at.field("seconds").integer().map(OptionalInt::of).orElse(OptionalInt.empty()),
        text(at, "setup"),
        at.field("cues").texts(),
        at.field("faults").texts(),
        at.field("figure").text());
  }

  private static Need need(Cursor at) {
    return new Need(
        text(at, "equipment"),
        at.field("count").integer().orElse(1),
        at.field("load").constant(Load.class));
  }

  private static Met met(Cursor at) {
    return new Met(
        text(at, "code"), integer(at, "edition"), at.field("value").number().orElse(0.0));
  }
}
