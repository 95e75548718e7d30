package counterset.score;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/** Counts every two exercises of a session that are alike in something. */
public abstract class AlikeConstraint extends CountConstraint implements MatchByMatch {

  AlikeConstraint(String id, Weight weight, String sentence, String unit, String topic) {
    super(id, weight, sentence, unit, topic);
  }

  /** What exercises that are alike have in common: a number from 0. */
  public abstract int key(Candidate exercise);

  @Override
  public final int tags(SessionFacts facts) {
    return facts.candidates().stream().mapToInt(this::key).max().orElse(-1) + 1;
  }

  @Override
  public final void ofExercise(SessionFacts facts, Candidate exercise, Tags tags) {
    tags.add(key(exercise), 1);
  }

  @Override
  public final int measure(SessionFacts facts, int tag, int count) {
    return count * (count - 1) / 2;
  }

  @Override
  final void list(List<Counted> counted, int units, PairMatches matches) {
    for (int later = 1; later < counted.size(); later++) {
      for (int earlier = 0; earlier < later; earlier++) {
        matches.match(1, counted.get(earlier).first(), counted.get(later).first());
      }
    }
  }

  @Override
  public final String counted(int amount, List<Match> matches) {
    return English.count(amount, "pair");
  }
}
