package leafturn.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class UnitsTest {
  @Test
  void theTwoVerbsFollowTheReader() {
    String text = "Returning more: collect, or return. Collected seed heads were not returned.";
    assertThat(Units.METRIC.told(text)).isEqualTo(text);
    assertThat(Units.US.told(text))
        .isEqualTo("Leaving more: bag, or leave. Bagged seed heads were not left.");
    assertThat(Units.US.told("the collection, on its return")).contains("the collection");
  }
}
