package counterset.referee;

import static counterset.referee.SmallProblems.arms;
import static counterset.referee.SmallProblems.core;
import static counterset.referee.SmallProblems.legs;
import static counterset.referee.SmallProblems.whole;

import counterset.fixture.Problems;
import counterset.model.At;
import counterset.model.Done;
import counterset.model.Exercise;
import counterset.model.Keep;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;

/** Small problems in which the coach names exercises. */
final class SmallWishes {

  private static final LocalDate TODAY = LocalDate.of(2026, 3, 10);

  private SmallWishes() {}

  static List<SmallProblem> problems() {
    return new SmallProblems()
        .add(
            "a place kept",
            16,
            legs(9, "dumbbell"),
            (plain, allowed) -> plain.keeping(new Keep(new At(2, 1), bilateral(allowed, 3).id())))
        .add(
            "two places kept, one of them one-sided",
            16,
            legs(9, "ankle-weights"),
            (plain, allowed) ->
                plain.keeping(
                    new Keep(new At(1, 0), bilateral(allowed, 2).id()),
                    new Keep(new At(3, 0), oneSided(allowed, 1).id())))
        .add(
            "exercises asked for",
            14,
            arms(7, "dumbbell"),
            (plain, allowed) -> plain.including(allowed.get(4).id(), allowed.get(13).id()))
        .add(
            "families and exercises excluded",
            16,
            legs(9, "dumbbell"),
            (plain, allowed) -> plain.excluding(allowed.get(1).family(), allowed.get(9).id()))
        .add(
            "likes and dislikes",
            16,
            whole(9, "dumbbell"),
            (plain, allowed) ->
                plain
                    .liking(allowed.get(2).id(), allowed.get(7).family(), allowed.get(12).pattern())
                    .disliking(allowed.get(5).pattern(), allowed.get(11).id()))
        .add("used lately", 16, legs(9, "loop-band"), SmallWishes::usedLately)
        .add(
            "used lately, undated",
            16,
            core(9, "mat"),
            (plain, allowed) -> usedLately(plain, allowed).undated())
        .list();
  }

  private static Problems usedLately(Problems plain, List<Exercise> allowed) {
    return plain.done(
        TODAY,
        new Done(TODAY.minusDays(1), ids(allowed, 0)),
        new Done(TODAY.minusDays(4), ids(allowed, 1)),
        new Done(TODAY.minusDays(13), ids(allowed, 2)),
        new Done(TODAY.minusDays(20), ids(allowed, 3)));
  }

  /** Every fifth from one of them on. */
  private static List<String> ids(List<Exercise> allowed, int from) {
    return IntStream.range(0, allowed.size())
        .filter(i -> i % 5 == from)
        .mapToObj(i -> allowed.get(i).id())
        .toList();
  }

  private static Exercise bilateral(List<Exercise> allowed, int number) {
    return allowed.stream().filter(e -> !e.isUnilateral()).skip(number).findFirst().orElseThrow();
  }

  private static Exercise oneSided(List<Exercise> allowed, int number) {
    return allowed.stream().filter(Exercise::isUnilateral).skip(number).findFirst().orElseThrow();
  }
}
