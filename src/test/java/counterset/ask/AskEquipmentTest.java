package counterset.ask;

import static counterset.ask.AskAssert.means;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AskEquipmentTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
      dumbbells                                | equipment dumbbell:2
      a dumbbell                               | equipment dumbbell:1
      one dumbbell                             | equipment dumbbell:1
      dumbbell                                 | equipment dumbbell:1
      dumb-bells                               | equipment dumbbell:2
      two 8 kg dumbbells                       | equipment dumbbell:2@8.0
      2 x 8kg dumbbells                        | equipment dumbbell:2@8.0
      8 kg dumbbells                           | equipment dumbbell:2@8.0
      a 12 kg kettlebell                       | equipment kettlebell:1@12.0
      dumbbells 6 and 10 kg                    | equipment dumbbell:2@6.0+10.0
      6 and 10 kg dumbbells                    | equipment dumbbell:2@6.0+10.0
      dumbbells of 7.5 kg                      | equipment dumbbell:2@7.5
      pair of 5 kg dumbbells                   | equipment dumbbell:2@5.0
      two pairs of dumbbells                   | equipment dumbbell:4
      two 6 kg dumbbells and two 10 kg dumbbells | equipment dumbbell:2@6.0+10.0
      one 6 kg and one 10 kg dumbbell          | equipment dumbbell:1@6.0+10.0
      two 6 kg dumbbells, a 10 kg dumbbell     | equipment dumbbell:2@6.0 dumbbell:1@10.0
      light dumbbells                          | equipment dumbbell:2(light)
      light and heavy dumbbells                | equipment dumbbell:2(light+heavy)
      heavy kettlebell                         | equipment kettlebell:1(heavy)
      a light and a heavy dumbbell             | equipment dumbbell:1(light+heavy)
      dumbbells 10 kg kettlebell               | equipment dumbbell:2 kettlebell:1@10.0
      dumbbells plus ankle weights             | equipment dumbbell:2 ankle-weights:1
      pair of ankle weights                    | equipment ankle-weights:1
      mini-bands with a chair and mat          | equipment loop-band:1 chair:1 mat:1
      two chairs                               | equipment chair:2
      pull up bar                              | equipment pull-up-bar:1
      pullup bar                               | equipment pull-up-bar:1
      no equipment                             | defaults
      no equipment, wall                       | defaults
      bodyweight only                          | defaults
      body weight session                      | defaults
      nothing but a chair                      | equipment chair:1
      dumbbells and nothing else               | equipment dumbbell:2
      dumbbells, no kettlebell                 | equipment dumbbell:2
      including ankle weights                  | equipment ankle-weights:1
      """)
  void equipment(String ask, String meaning) {
    means(ask, meaning);
  }
}
