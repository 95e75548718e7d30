package counterset.ask;

import static counterset.ask.AskAssert.means;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AskTimeTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
      20 min                                   | defaults
      20 min, whole body                       | defaults
      20 minutes                               | defaults
      20-minute session                        | defaults
      a 30 min workout please                  | min 30
      30min                                    | min 30
      thirty minutes                           | min 30
      twenty-five minutes                      | min 25
      half an hour                             | min 30
      an hour                                  | min 60
      1 h                                      | min 60
      1h30                                     | min 90
      1.5 hours                                | min 90
      an hour and a half                       | min 90
      one and a half hours                     | min 90
      1 hour 10                                | min 70
      1 hour 10, legs                          | min 70; targets lower
      1 hour and 10 minutes                    | min 70
      three quarters of an hour                | min 45
      3/4 of an hour                           | min 45
      a quarter of an hour                     | min 15
      90 min                                   | min 90
      up to 25 min                             | min 25
      no more than 25 minutes                  | min 25
      20 min, 20 minutes                       | defaults
      8 min                                    | min 8; warmUp 60
      12 min                                   | min 12; warmUp 90
      13 min                                   | min 13
      10 min, warm-up 2 min                    | min 10; warmUp 120
      """)
  void durations(String ask, String meaning) {
    means(ask, meaning);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
      45/30                                    | defaults
      40/20                                    | work 40; rest 20
      work/rest 40/20                          | work 40; rest 20
      40 / 20 s                                | work 40; rest 20
      45/15/30                                 | switch 15
      40 s work, 20 s rest                     | work 40; rest 20
      40 s work 20 s rest                      | work 40; rest 20
      work 40 s and rest 20 s                  | work 40; rest 20
      40 seconds on 20 off                     | work 40; rest 20
      40 seconds of work, 15 s switch          | work 40; switch 15
      1 min work, 1 minute rest                | work 60; rest 60
      rest: 1 min 30 s                         | rest 90
      no rest                                  | rest 0
      warm-up 3 min                            | warmUp 180
      3 min warmup                             | warmUp 180
      20 min warm-up 3 min                     | warmUp 180
      3 min warm-up 25 min session             | min 25; warmUp 180
      no warm-up, cool-down 2 min              | warmUp 0; coolDown 120
      without a warm up                        | warmUp 0
      get ready 15 s                           | getReady 15
      2 rounds                                 | rounds 2
      three rounds of supersets                | rounds 3
      straight sets                            | per 1
      tri-sets                                 | per 3
      trisets, compound sets                   | per 3; pairing compound
      any pairing                              | pairing free
      opposites                                | defaults
      beginner                                 | level 1
      Easy, for beginners                      | level 1
      intermediate level                       | defaults
      level 3                                  | level 3
      level two                                | defaults
      seed 7                                   | seed 7
      """)
  void clockLevelAndPairing(String ask, String meaning) {
    means(ask, meaning);
  }
}
