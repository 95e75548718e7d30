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
    return Exercise.builder()
        .id(text(at, "id"))
        .name(text(at, "name"))
        .names(at.field("names").texts())
        .part(constant(at, "part", Part.class))
        .pattern(text(at, "pattern"))
        .family(text(at, "family"))
        .variantOf(at.field("variantOf").text())
        .multiJoint(at.field("multiJoint").bool().orElse(false))
        .intensity(integer(at, "intensity"))
        .level(integer(at, "level"))
        .standing(at.field("standing").integer().orElse(Exercise.KNOWN))
        .standingSources(at.field("standingSources").texts())
        .primary(set(at, "primary"))
        .secondary(set(at, "secondary"))
        .sides(constant(at, "sides", Sides.class))
        .position(constant(at, "position", Position.class))
        .needs(at.field("needs").elements().stream().map(ExerciseElement::need).toList())
        .allowsWorn(set(at, "allowsWorn"))
        .demand(Elements.demand(at.field("demand")))
        .demandSource(text(at, "demandSource"))
        .traits(set(at, "traits"))
        .met(met(at.field("met")))
        .seconds(at.field("seconds").integer().map(OptionalInt::of).orElse(OptionalInt.empty()))
        .setup(text(at, "setup"))
        .cues(at.field("cues").texts())
        .faults(at.field("faults").texts())
        .figure(at.field("figure").text())
        .build();
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
