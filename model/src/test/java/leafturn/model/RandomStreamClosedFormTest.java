package leafturn.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

class RandomStreamClosedFormTest {
  private static final int DRAWS = 200_000;

  @Test
  void momentsAreThoseOfTheDistributions() {
    // mean and variance, within four standard errors of 200,000 draws
    moments(RandomStream::uniform, 0.5, 1.0 / 12);
    moments(RandomStream::normal, 0, 1);
    moments(random -> random.exponential(3), 3, 9);
    // halves of a triangle of widths 1 and 4: means 1/3 and 4/3 away, squares 1/6 and 16/6
    double mean = 2 + (4.0 / 3 - 1.0 / 3) / 2;
    moments(random -> random.around(1, 2, 6), mean, 17.0 / 12 - (mean - 2) * (mean - 2));
  }

  private static void moments(ToDoubleFunction<RandomStream> draw, double mean, double variance) {
    RandomStream random = new RandomStream(42, 1);
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < DRAWS; i++) {
      double drawn = draw.applyAsDouble(random);
      sum += drawn;
      squares += (drawn - mean) * (drawn - mean);
    }
    assertThat(sum / DRAWS).isCloseTo(mean, within(4 * Math.sqrt(variance / DRAWS)));
    assertThat(squares / DRAWS).isCloseTo(variance, within(variance * 12 / Math.sqrt(DRAWS)));
  }

  @Test
  void aPlaceGivesItsNumbersWhateverWasDrawnBefore() {
    RandomStream one = new RandomStream(7, 3);
    RandomStream other = new RandomStream(7, 3);
    other.normal();
    double first = one.at(100).normal();
    other.at(5).uniform();
    assertThat(other.at(100).normal()).isEqualTo(first);
    assertThat(other.at(101).normal()).isNotEqualTo(first);
    assertThat(new RandomStream(8, 3).at(100).normal()).isNotEqualTo(first);
    assertThat(new RandomStream(7, 4).at(100).normal()).isNotEqualTo(first);
  }
}
