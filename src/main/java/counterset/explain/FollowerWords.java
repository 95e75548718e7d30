package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Problem;
import java.util.List;

/** For whom something holds, as the opening of a sentence. */
final class FollowerWords {

  private final Problem problem;
  private final TrackWords tracks;

  FollowerWords(Problem problem, Catalogue catalogue) {
    this.problem = problem;
    this.tracks = new TrackWords(catalogue);
  }

  /**
   * {@code for sore knees and for no floor, }.
   *
   * @param names of tracks; none if it holds for the session itself
   */
  String of(List<String> names) {
    if (names.isEmpty()) {
      return "";
    }
    if (names.size() > 1 && names.size() == problem.tracks().size()) {
      return "for every track, ";
    }
    return English.list(names.stream().map(name -> "for " + tracks.ofName(name)).toList()) + ", ";
  }
}
