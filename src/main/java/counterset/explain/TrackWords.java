package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Limitation;
import counterset.model.Plan;
import counterset.model.Track;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The groups of followers that have limitations of their own, in a coach's words. */
public final class TrackWords {

  private final Catalogue catalogue;

  /** The words for the limitations of a catalogue. */
  public TrackWords(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** Within a sentence: {@code sore knees}, {@code sore knees plus no floor}. */
  public String of(Track track) {
    return of(track.limitations());
  }

  /** The same for the limitations that each follower of a track has. */
  public String of(Collection<String> limitations) {
    List<String> names = new ArrayList<>();
    for (String id : limitations) {
      Limitation limitation = catalogue.limitations().get(id);
      names.add(limitation == null ? id : English.lower(limitation.name()));
    }
    return String.join(" plus ", names);
  }

  /** The same for the name of a track. */
  String ofName(String name) {
    return of(List.of(name.split("\\+")));
  }

  /**
   * The cautions of the limitations that only tracks have, each once: {@code For sore knees: bend
   * only as far as is comfortable.}
   */
  public List<String> cautions(Plan plan) {
    Set<String> ids = new LinkedHashSet<>();
    plan.tracks().forEach(track -> ids.addAll(track.limitations()));
    ids.removeAll(plan.problem().limitations());
    return ids.stream().map(catalogue.limitations()::get).map(TrackWords::caution).toList();
  }

  private static String caution(Limitation limitation) {
    String name = limitation.name() + ": ";
    String caution = limitation.caution();
    return "For "
        + English.lower(name)
        + (caution.startsWith(name) ? caution.substring(name.length()) : caution);
  }
}
