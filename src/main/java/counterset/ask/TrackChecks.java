package counterset.ask;

import counterset.model.Catalogue;
import counterset.model.Limitation;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/**
 * Finds tracks that are named twice, or that the limitations of the whole session cover already.
 */
final class TrackChecks {

  private static final int MOST = 64;

  private final Catalogue catalogue;
  private final AskDraft draft;

  TrackChecks(Catalogue catalogue, AskDraft draft) {
    this.catalogue = catalogue;
    this.draft = draft;
  }

  void report() {
    if (draft.tracks.size() > MOST) {
      draft.fault(
          draft.tracks.get(MOST).span(),
          "A class has at most " + MOST + " tracks. Leave some out.");
    }
    Map<Set<String>, Span> seen = new HashMap<>();
    for (AskDraft.TrackNamed track : draft.tracks) {
      Span before = seen.putIfAbsent(track.ids(), track.span());
      if (before != null) {
        draft.fault(
            track.span(), "The class has " + before.quoted() + " already. Keep one of the two.");
      }
      track.ids().stream()
          .filter(draft.limitations::containsKey)
          .forEach(id -> covered(id, track.span()));
    }
  }

  private void covered(String id, Span span) {
    Limitation limitation = catalogue.limitations().get(id);
    draft.fault(
        span,
        limitation.name()
            + " binds the whole session already ("
            + draft.limitations.get(id).quoted()
            + "), so nobody needs a modification for it. Keep one of the two.");
  }
}
