package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class KeptFilesTest {
  private Instant now = Instant.parse("2026-05-03T10:00:00Z");
  private final KeptFiles files = new KeptFiles(() -> now);

  private static KeptFile file(String key, int bytes) {
    return KeptFile.of(key, ImportKind.PROPERTIES, "a.csv", new byte[bytes], "");
  }

  @Test
  void aFileIsThereForItsSessionAndForHalfAnHour() {
    files.keep("one", file("a", 5));
    assertThat(files.find("one", "a")).isPresent();
    assertThat(files.find("two", "a")).isEmpty();
    now = now.plus(Duration.ofMinutes(29));
    assertThat(files.find("one", "a")).isPresent();
    now = now.plus(Duration.ofMinutes(2));
    assertThat(files.find("one", "a")).isEmpty();
  }

  @Test
  void theOldestGiveWay() {
    for (String key : new String[] {"a", "b", "c", "d"}) {
      files.keep("one", file(key, 5));
    }
    assertThat(files.find("one", "a")).isEmpty();
    assertThat(files.find("one", "b")).isPresent();
    for (int session = 0; session < 7; session++) {
      files.keep("session " + session, file("x" + session, 10_000_000));
    }
    assertThat(files.find("session 0", "x0")).isEmpty();
    assertThat(files.find("session 6", "x6")).isPresent();
  }

  @Test
  void whatWasImportedNeedsNoBytes() {
    KeptFile imported = file("a", 5).imported("3 sheets");
    assertThat(imported.bytes()).isEmpty();
    assertThat(imported.isImported()).isTrue();
    assertThat(file("a", 5).isImported()).isFalse();
  }
}
