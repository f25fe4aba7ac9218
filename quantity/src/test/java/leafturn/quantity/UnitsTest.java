package leafturn.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class UnitsTest {
  @Test
  void theTwoVerbsFollowTheReader() {
    String text = "Returning clippings: collect, or return. Collected ones were not returned.";
    assertThat(Units.METRIC.told(text)).isEqualTo(text);
    assertThat(Units.US.told(text))
        .isEqualTo("Leaving clippings: bag, or leave. Bagged ones were not left.");
    assertThat(Units.US.told("the collection, on its return")).contains("the collection");
  }

  @Test
  void whatIsLeftAreTheClippingsAndNotTheLawn() {
    assertThat(Units.US.told("Mown, returned")).isEqualTo("Mown, clippings left");
    assertThat(Units.US.told("Returned or collected")).isEqualTo("Clippings left or bagged");
    assertThat(Units.US.told("Mown, part returned")).isEqualTo("Mown, part of the clippings left");
    assertThat(Units.US.told("50\u202f% returned")).isEqualTo("50\u202f% of the clippings left");
    assertThat(Units.US.told("Returning on another day"))
        .isEqualTo("Leaving clippings on another day");
    assertThat(Units.US.told("returning pieces longer than this"))
        .isEqualTo("leaving pieces longer than this");
    assertThat(Units.US.told("mow and return")).isEqualTo("mow and leave clippings");
    assertThat(Units.US.told("all clippings returned")).isEqualTo("all clippings left");
  }
}
