package counterset.report.html;

import java.util.List;

/**
 * One interval of the run sheet. Empty text and empty lists where there is nothing to say.
 *
 * @param time when it begins
 * @param length its seconds
 * @param kind the id of its kind
 * @param mark the letter of the position, or the name of the kind
 * @param with what is held, worn or laid out
 * @param tasks what is handled, and where the body goes
 * @param cue the first one
 * @param more the other cues on one line
 * @param watch what goes wrong most often
 * @param show what the followers of the tracks do instead
 * @param picture SVG
 */
record Row(
    String time,
    String length,
    String kind,
    String mark,
    String name,
    String side,
    String with,
    String tasks,
    String setup,
    String cue,
    String more,
    String watch,
    List<Line> show,
    String say,
    String picture) {

  /** Without an exercise of its own. */
  static Row pause(String time, String length, String kind, String mark, String tasks, String say) {
    return new Row(time, length, kind, mark, "", "", "", tasks, "", "", "", "", List.of(), say, "");
  }
}
