package leafturn.records.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import leafturn.records.InputException;
import leafturn.records.Mutations;
import leafturn.records.SourceText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever arrives as a sheet's document is refused in sentences, or kept so that it comes back.
 */
class SpoiltSheetsTest {
  private static final int DOCUMENTS = 800;

  static List<Kind<?>> kinds() {
    return Kind.all();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  <C extends Content> void refusesOrKeepsASpoiltDocument(Kind<C> kind) {
    Mutations mutations = new Mutations(20_260_525);
    int refused = 0;
    for (int seed = 0; seed < DOCUMENTS; seed++) {
      String spoilt = mutations.spoil(kind.write(new AnySheet(seed).of(kind)));
      try {
        C kept = kind.read(new SourceText("sheet", spoilt));
        assertThat(kind.checked(kept)).as("seed %d: %s", seed, spoilt).isEqualTo(kept);
      } catch (InputException e) {
        refused++;
        assertThat(e.faults())
            .as("seed %d: %s", seed, spoilt)
            .isNotEmpty()
            .noneMatch(String::isBlank);
      }
    }
    assertThat(refused).isBetween(DOCUMENTS / 2, DOCUMENTS - 1);
  }
}
