package counterset.ask;

import static counterset.ask.AskAssert.means;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AskReaderTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
      lower body                               | targets lower
      LEGS                                     | targets lower
      lower legs                               | targets calves
      upper                                    | targets upper
      trunk                                    | targets core
      full body                                | defaults
      quads, hamstrings & calves               | targets quadriceps hamstrings calves
      quads/glutes                             | targets quadriceps gluteus-maximus
      back                                     | targets upper-back lats
      lower back                               | targets lower-back
      arms plus abs                            | targets biceps triceps abdominals
      glute                                    | targets gluteus-maximus
      shins                                    | targets shins
      legs, no calves                          | targets quadriceps hamstrings gluteus-maximus
      legs without quads and calves            | targets hamstrings gluteus-maximus
      legs except quads or calves              | targets hamstrings gluteus-maximus
      legs, no shins                           | targets lower
      legs, more glutes                        | targets quadriceps hamstrings gluteus-maximus*2 calves
      core with a glute focus                  | targets abdominals lower-back gluteus-maximus*2
      legs, focus on glutes and quads          | targets quadriceps*2 hamstrings gluteus-maximus*2 calves
      core, 3 sets of glutes                   | targets abdominals lower-back gluteus-maximus>=3
      glutes twice, quads three times          | targets gluteus-maximus>=2 quadriceps>=3
      extra emphasis on the chest, upper       | targets chest*2 upper-back lats shoulders biceps triceps
      """)
  void targets(String ask, String meaning) {
    means(ask, meaning);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
      sore knees                               | limits sore-knees
      with a bad knee                          | limits sore-knees
      knees                                    | limits sore-knees
      Back pain                                | limits sore-lower-back
      sore back                                | limits sore-lower-back
      sore knees and back                      | limits sore-knees sore-lower-back
      sore knees, wrists and shoulders         | limits sore-knees sore-wrists sore-shoulders
      sore knees plus shoulders                | limits sore-knees sore-shoulders
      sore knees; back and chest               | targets upper-back lats chest; limits sore-knees
      back and knee pain                       | limits sore-lower-back sore-knees
      easy on the knees                        | limits sore-knees
      gentle on her shoulders                  | limits sore-shoulders
      no floor                                 | limits no-floor
      off the floor                            | limits no-floor
      nothing on the floor                     | limits no-floor
      no floor presses                         | exclude floor-press
      no jumping                               | limits no-jumping
      no jumping jacks                         | exclude jumping-jack
      no kneeling, can't kneel                 | limits no-kneeling
      pregnant                                 | limits pregnancy
      20 min back, sore knees and dumbbells    | targets upper-back lats; equipment dumbbell:2; limits sore-knees
      """)
  void limitations(String ask, String meaning) {
    means(ask, meaning);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
      no lunges                                | exclude lunge
      no lunges, squats or push ups            | exclude lunge squat push-up
      not goblet squats                        | exclude goblet-squat
      no more curtsies                         | exclude curtsy
      without pushups, 30 min                  | min 30; exclude push-up
      include hip hinges                       | include hip-hinge
      must have split squats and hip hinge     | include split-squat hip-hinge
      heavy dumbbells, include a goblet squat  | equipment dumbbell:2(heavy); include goblet-squat
      include arm curl                         | include curl
      keep 3A reverse lunge                    | keep 3A=reverse-lunge
      keep hip hinge at 2b                     | keep 2B=hip-hinge
      likes hinges and bridges                 | likes hinge bridge
      she loves hinges, hates lunges           | likes hinge; dislikes lunge
      does not like push-ups                   | dislikes push-up
      level 3, include single leg squat        | level 3; include single-leg-squat
      """)
  void exercises(String ask, String meaning) {
    means(ask, meaning);
  }

  @Test
  void wholeAsks() {
    means(
        "20 min, lower body, dumbbells plus ankle weights, sore knees",
        "targets lower; equipment dumbbell:2 ankle-weights:1; limits sore-knees");
    means(
        "30 minutes upper body two 8 kg dumbbells no floor advanced 40/20",
        "min 30; targets upper; equipment dumbbell:2@8.0; limits no-floor; level 3; work 40; rest 20");
    means(
        "Half an hour of legs with a 12 kg kettlebell; no lunges; more glutes.",
        "min 30; targets quadriceps hamstrings gluteus-maximus*2 calves; equipment kettlebell:1@12.0; exclude lunge");
    means(
        "twenty minutes, whole body, no equipment, beginner, quiet", "limits no-jumping; level 1");
    means(
        "15-min core & back, tri-sets, 2 rounds, seed 3",
        "min 15; targets abdominals lower-back upper-back lats; per 3; rounds 2; seed 3");
  }
}
