package counterset.ask;

import static counterset.ask.AskAssert.fails;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AskFaultsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          dumbels                     | 1:dumbels -> maybe "dumbbells"
          20 min, two dumbels         | 9:two dumbels -> maybe "dumbbells"
          barbells, 20 min            | 1:barbells -> not in the catalogue; the nearest known: "
          20 min, xylophone           | 9:xylophone -> Known equipment: dumbbell, kettlebell, ankle weights
          qaudriceps                  | 1:qaudriceps -> maybe "quadriceps"
          no lungs                    | 1:no lungs -> maybe "lunges"
          weights, 20 min             | 1:weights -> "ankle weights"
          sore elbows                 | 1:sore elbows -> Not understood
          legs, sore                  | 7:sore -> Not understood
          purple bananas, legs, flying | 1:purple bananas -> Not understood $ 23:flying -> Not understood
          20 min @ home               | 8:@ -> This sign says nothing
          legs, 8 kg                  | 7:8 kg -> Say what has this mass
          legs, twelve                | 7:twelve -> Say what this number is
          legs, 7                     | 7:7 -> Say what this number is
          dumbbells or kettlebell     | 11:or -> Choose one
          20-30 min                   | 1:20- -> Ranges
          dumbbells 2,5 kg            | 11:2,5 kg -> decimal number with a point
          20 min monday               | 8:monday -> Not understood
          goblet squats               | 1:goblet squats -> "include goblet squats"
          legs, bridges               | 7:bridges -> "no bridges"
          likes glutes                | 1:likes glutes -> Likes and dislikes are for exercises
          more lunges                 | 1:more lunges -> Emphasis is for muscle groups
          3 sets of lunges            | 1:3 sets of lunges -> once a session
          3 sets                      | 1:3 sets -> which muscle group
          include squats              | 1:include squats -> "Goblet squat"
          include march               | 1:include march -> warm-up
          keep 3A                     | 1:keep 3A -> Name the exercise
          keep hip hinge              | 1:keep hip hinge -> Say where to keep it
          """)
  void notUnderstood(String ask, String expected) {
    fails(ask, expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          -5 min                      | 1:-5 min -> at least 1 minute
          0 min                       | 1:0 min -> at least 1 minute
          zero minutes, legs          | 1:zero minutes -> at least 1 minute
          181 min                     | 1:181 min -> at most 180 minutes
          4 hours                     | 1:4 hours -> at most 180 minutes
          7.5 min                     | 1:7.5 min -> whole minutes. Say 8 min
          90 s                        | 1:90 s -> Say what these seconds are
          20 min, 30 min              | 9:30 min -> Two different durations: "20 min" and "30 min"
          0/30                        | 1:0/30 -> seconds of work are a whole number from 1
          work 0 s                    | 1:work 0 s -> seconds of work are a whole number from 1
          no work                     | 1:no work -> seconds of work
          45/15/30/10                 | 1:45/15/30/10 -> work/switch/rest
          45/30, 20 s rest            | 8:20 s rest -> Two different lengths of rest
          cool-down                   | 1:cool-down -> Say how long the cool-down is
          warm-up 3                   | 1:warm-up 3 -> minutes or seconds
          -20 s rest                  | 1:-20 s rest -> seconds of rest
          level 4                     | 1:level 4 -> A level is 1
          level                       | 1:level -> A level is 1
          beginner, advanced          | 11:advanced -> Two different levels
          not hard                    | 1:not hard -> Say which one you want
          0 rounds                    | 1:0 rounds -> whole number from 1 to 10
          0 targets                   | 1:0 targets -> Name the targets
          no targets                  | 1:no targets -> at least one target
          0 dumbbells                 | 1:0 dumbbells -> whole number from 1 to 20; leave out
          2.5 dumbbells               | 1:2.5 dumbbells -> whole number
          -5 kg dumbbells             | 1:-5 kg dumbbells -> more than 0
          10 lb dumbbells             | 1:10 lb dumbbells -> kilograms
          0 sets of glutes            | 1:0 sets of glutes -> from 1 to 20
          seed -1                     | 1:seed -1 -> A seed is a whole number
          no wall                     | 1:no wall -> always taken to be there
          """)
  void nonsense(String ask, String expected) {
    fails(ask, expected);
  }

  @Test
  void emptyAsk() {
    fails("", "1: -> The ask is empty");
    fails("  ", "1: -> The ask is empty");
    fails("a session, please", "1:a session, please -> The ask is empty");
  }

  @Test
  void controlCharactersAreShownEscaped() {
    fails("20 min\u0007, legs", "7:\\u0007 -> one line of plain text");
    fails("legs\n20 min", "5:\\u000a -> one line of plain text");
    fails("legs \u202e", "6:\\u202e -> This sign");
    assertThat(AskFixture.read("legs,\t20 min").problem().orElseThrow().title())
        .isEqualTo("legs, 20 min");
  }

  @Test
  void veryLongAsk() {
    AskReading reading = AskFixture.read("legs ".repeat(201));
    assertThat(reading.faults()).hasSize(1);
    assertThat(reading.faults().get(0).message()).contains("at most 1000 characters", "1005");
    assertThat(AskFixture.read("legs ".repeat(199)).faults()).isEmpty();
  }

  @Test
  void columnsCountCharacters() {
    fails(
        "legs, \ud83d\ude00 barbells",
        "7:\ud83d\ude00 barbells -> the nearest known: \"dumbbells\"");
  }
}
