package counterset.ask;

import counterset.model.Catalogue;
import java.util.Collection;
import java.util.Locale;
import java.util.stream.Collectors;

/** Says which groups of a class get modifications. */
final class TrackEcho {

  private TrackEcho() {}

  /** {@code a modification for sore knees; one for no jumping}. */
  static String of(AskDraft draft, Catalogue catalogue) {
    return draft.tracks.stream()
        .map(track -> names(track.ids(), catalogue))
        .collect(Collectors.joining("; one for ", "a modification for ", ""));
  }

  private static String names(Collection<String> ids, Catalogue catalogue) {
    String names =
        ids.stream()
            .map(id -> catalogue.limitations().get(id).name().toLowerCase(Locale.ROOT))
            .collect(Collectors.joining(" plus "));
    return ids.size() > 1 ? names + " together" : names;
  }
}
