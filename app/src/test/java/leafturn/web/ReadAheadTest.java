package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ReadAheadTest {
  @Test
  void theWholeWayOfARequestIsGone() throws Exception {
    assertThat(ReadAhead.answer()).startsWith("HTTP/1.1 200").endsWith("<p>");
  }
}
