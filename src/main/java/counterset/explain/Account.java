package counterset.explain;

import counterset.model.At;
import java.util.List;
import java.util.Optional;

/**
 * The points of a session traced to their places.
 *
 * @param sections superset by superset, then the session as a whole, then each track; their lines
 *     add up to the score, level by level
 */
public record Account(List<Section> sections) {

  public Account {
    sections = List.copyOf(sections);
  }

  /**
   * What belongs together.
   *
   * @param superset its number, if the section is about one
   * @param title what it is about
   * @param lines what it earns and costs, the largest first
   * @param notes what it is good for without earning or costing anything
   */
  public record Section(
      Optional<Integer> superset, String title, List<Line> lines, List<String> notes) {

    public Section {
      lines = List.copyOf(lines);
      notes = List.copyOf(notes);
    }

    /** What its lines add up to at a level. */
    public int points(String level) {
      return lines.stream().filter(line -> line.level().equals(level)).mapToInt(Line::points).sum();
    }
  }

  /**
   * One match of a constraint.
   *
   * @param level {@code hard}, {@code medium} or {@code soft}
   * @param points at that level; negative for a cost
   * @param places where, in order; empty if it is about the whole session
   * @param sentence what earns or costs the points
   */
  public record Line(
      String constraint, String level, int points, List<At> places, String sentence) {

    public Line {
      places = List.copyOf(places);
    }
  }
}
