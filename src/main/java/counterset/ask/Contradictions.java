package counterset.ask;

import counterset.model.Catalogue;
import counterset.model.Equipment;

/** Finds what an ask says against itself. */
final class Contradictions {

  private final Catalogue catalogue;
  private final AskDraft draft;

  Contradictions(Catalogue catalogue, AskDraft draft) {
    this.catalogue = catalogue;
    this.draft = draft;
  }

  void report() {
    equipment();
    muscles();
    supersets();
    likes();
    new TrackChecks(catalogue, draft).report();
    new ExerciseChecks(catalogue, draft).report();
  }

  private void equipment() {
    for (AskDraft.Item item : draft.equipment) {
      Equipment equipment = catalogue.equipment().get(item.owned().id());
      boolean lifted = !equipment.alwaysThere() && equipment.comfortIn().isEmpty();
      if (draft.noEquipment.isSet() && lifted) {
        draft.fault(item.span(), contradicts(draft.noEquipment.span()));
      }
      Span without = draft.withoutEquipment.get(item.owned().id());
      if (without != null) {
        draft.fault(without, contradicts(item.span()));
      }
    }
  }

  private void muscles() {
    draft.removed.forEach(
        (id, span) -> {
          Span wanted = draft.wanted.get(id);
          if (wanted != null) {
            draft.fault(span, contradicts(wanted));
          }
        });
  }

  private void supersets() {
    if (draft.perSuperset.or(2) != 1) {
      return;
    }
    draft
        .pairing
        .value()
        .ifPresent(
            it ->
                draft.fault(
                    draft.pairing.span(),
                    "Straight sets have no pairing ("
                        + draft.perSuperset.span().quoted()
                        + "). Keep one of the two."));
    Slot<Integer> between = draft.clock.get(ClockPart.SWITCH);
    if (between.or(0) > 0) {
      draft.fault(
          between.span(),
          "Straight sets have no switch ("
              + draft.perSuperset.span().quoted()
              + "). Keep one of the two.");
    }
  }

  private void likes() {
    draft.likes.forEach(
        (id, span) -> {
          if (draft.dislikes.containsKey(id)) {
            draft.fault(draft.dislikes.get(id), contradicts(span));
          }
        });
  }

  static String contradicts(Span other) {
    return "This contradicts " + other.quoted() + ". Keep one of the two.";
  }
}
