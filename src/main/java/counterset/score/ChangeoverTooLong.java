package counterset.score;

import static counterset.score.Weight.rule;

import counterset.model.At;
import counterset.model.Changeover;
import counterset.model.English;
import counterset.model.Match;
import java.util.Comparator;
import java.util.List;

/** Every changeover fits in its pause, on each track too; a unit is a second too long. */
public final class ChangeoverTooLong extends StepConstraint implements MatchByMatch {

  ChangeoverTooLong() {
    super(
        "changeoverTooLong",
        rule("Maybe swap one of them, change their order, or lengthen the pause."),
        "Every changeover fits in its pause, on each track too.",
        "per second too long",
        "Changeovers too long");
  }

  @Override
  public int measure(Step step) {
    return Math.max(0, step.seconds() - step.room());
  }

  @Override
  public boolean isForTracks() {
    return true;
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return amount + " s over, in " + English.count(matches.size(), "place");
  }

  @Override
  public String said(Told told) {
    return told.amount() + " s too long for the changeover: " + told.exercises() + times(told);
  }

  private static String times(Told told) {
    return told.own().changeovers().stream()
        .filter(changeover -> isOf(changeover, told))
        .max(Comparator.comparingInt(Changeover::excess))
        .map(it -> " (" + it.seconds() + " s needed, " + it.available() + " s there)")
        .orElse("");
  }

  private static boolean isOf(Changeover changeover, Told told) {
    List<At> places = told.match().places();
    return places.indexOf(changeover.after()) == 0
        && told.at(places.get(places.size() - 1)).filter(changeover.to()::equals).isPresent();
  }

  @Override
  public String came(Told told) {
    return "the changeover is " + told.amount() + " s " + (told.isWhole() ? "too long" : "longer");
  }

  @Override
  public String went(Told told) {
    return told.isWhole()
        ? "the changeover is no longer " + told.amount() + " s too long"
        : "the changeover is " + told.amount() + " s shorter";
  }

  @Override
  public String total(Total total) {
    return "the changeovers are too long by " + total.amount() + " s " + total.less();
  }
}
