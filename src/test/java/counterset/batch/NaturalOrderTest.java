package counterset.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NaturalOrderTest {

  @Test
  void numbersGoByTheirValueAndLettersWithoutTheirCase() {
    List<String> sorted =
        List.of(
            "a.json",
            "anna-1.json",
            "anna-02.json",
            "Anna-2.json",
            "anna-10.json",
            "anna-99999999999999999999.json",
            "anna-x.json",
            "ben.json");
    for (int seed = 0; seed < 20; seed++) {
      List<String> mixed = new ArrayList<>(sorted);
      Collections.shuffle(mixed, new Random(seed));
      mixed.sort(new NaturalOrder());
      assertThat(mixed).as("seed %d", seed).hasSameSizeAs(sorted);
      assertThat(mixed.get(0)).isEqualTo("a.json");
      assertThat(mixed.indexOf("anna-1.json")).isLessThan(mixed.indexOf("Anna-2.json"));
      assertThat(mixed.indexOf("Anna-2.json")).isLessThan(mixed.indexOf("anna-10.json"));
      assertThat(mixed.subList(4, 8)).isEqualTo(sorted.subList(4, 8));
    }
  }

  @Test
  void onlyTheSameNameIsTheSame() {
    NaturalOrder order = new NaturalOrder();
    assertThat(order.compare("a1", "a1")).isZero();
    assertThat(order.compare("a1", "a01")).isNotZero();
    assertThat(order.compare("a1", "A1")).isEqualTo(-order.compare("A1", "a1")).isNotZero();
    assertThat(order.compare("a", "a1")).isNegative();
  }
}
