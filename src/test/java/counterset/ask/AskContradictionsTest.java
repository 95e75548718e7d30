package counterset.ask;

import static counterset.ask.AskAssert.fails;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AskContradictionsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
      no equipment, dumbbells     | 15:dumbbells -> contradicts "no equipment"
      dumbbells, no dumbbells     | 12:no dumbbells -> contradicts "dumbbells"
      two dumbbells, one dumbbell | 16:one dumbbell -> Two different counts
      glutes, quads, no glutes    | 16:no glutes -> contradicts "glutes"
      glutes, no glutes           | 9:no glutes -> contradicts "glutes"
      legs, no legs               | 7:no legs -> No target is left
      straight sets, compound sets | 16:compound sets -> Straight sets have no pairing
      likes lunges, hates lunges  | 15:hates lunges -> contradicts "likes lunges"
      include hip hinge, no hip hinge | 1:include hip hinge -> ruled out by "no hip hinge"
      include curtsy, no lunges   | 1:include curtsy -> ruled out by "no lunges"
      include split squat, sore knees | 1:include split squat -> not suitable with "sore knees"
      keep 1A glute bridge, no floor | 1:keep 1A glute bridge -> not suitable with "no floor"
      include single leg squat    | 1:include single leg squat -> has level 3, above the level 2 that is assumed
      include push-up, beginner   | 1:include push-up -> "Push up" has level 2, above the level 1
      include goblet squat        | 1:include goblet squat -> needs 1 heavy dumbbell
      light dumbbells, include goblet squat | 18:include goblet squat -> needs 1 heavy dumbbell
      keep 3C hip hinge           | 1:keep 3C hip hinge -> a superset has 2 positions
      keep 3A hip hinge, keep 3A curtsy | 20:keep 3A curtsy -> contradicts "keep 3A hip hinge"
      no sore knees               | 1:no sore knees -> Leave out a limitation
      not pregnant                | 1:not pregnant -> Leave out a limitation
      sore knees, shoulders       | 13:shoulders -> may be sore or a target
      sore knees shoulders        | 12:shoulders -> may be sore or a target
      sore knees with shoulders   | 17:shoulders -> may be sore or a target
      sore knees and calves       | 16:calves -> no limitation "sore calves"
      easy on the calves          | 1:easy on the calves -> Name the limitation
      -5 min, dumbels, level 9    | 1:-5 min -> at least $ 9:dumbels -> dumbbells $ 18:level 9 -> A level
      """)
  void contradictions(String ask, String expected) {
    fails(ask, expected);
  }
}
