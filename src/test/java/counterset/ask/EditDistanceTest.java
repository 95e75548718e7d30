package counterset.ask;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.fixture.Slips;
import java.util.List;
import org.junit.jupiter.api.Test;

class EditDistanceTest {

  @Test
  void isTheFewestSlipsOrMoreThanTheMost() {
    List<String> words = Slips.words(4);
    for (String one : words) {
      for (String other : words) {
        int fewest = Slips.fewest(one, other);
        for (int most = 0; most <= 4; most++) {
          int distance = EditDistance.between(one, other, most);
          if (fewest <= most) {
            assertThat(distance).as("%s, %s, %d", one, other, most).isEqualTo(fewest);
          } else {
            assertThat(distance).as("%s, %s, %d", one, other, most).isGreaterThan(most);
          }
        }
      }
    }
  }
}
