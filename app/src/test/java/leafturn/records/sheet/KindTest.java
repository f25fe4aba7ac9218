package leafturn.records.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import leafturn.records.SourceText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for the documents of every kind. */
class KindTest {
  private static final int CONTENTS = 300;

  static java.util.List<Kind<?>> kinds() {
    return Kind.all();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  <C extends Content> void readsWhatItWrote(Kind<C> kind) {
    for (long seed = 0; seed < CONTENTS; seed++) {
      C content = new AnySheet(seed).of(kind);
      String document = kind.write(content);

      C read = kind.read(new SourceText(kind.name(), document));

      assertThat(read).as("seed %d: %s", seed, document).isEqualTo(content);
      assertThat(kind.write(read)).as("seed %d", seed).isEqualTo(document);
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void isFoundByItsName(Kind<?> kind) {
    assertThat(Kind.named(kind.name())).containsSame(kind);
  }
}
