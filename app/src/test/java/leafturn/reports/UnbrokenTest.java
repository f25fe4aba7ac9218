package leafturn.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class UnbrokenTest {
  @Test
  void aNumberStaysWithItsUnit() {
    assertThat(Unbroken.of("39 % of 105 mm at 4 °C, 12 g/m² on 640 m²"))
        .isEqualTo("39\u00a0% of 105\u00a0mm at 4\u00a0°C, 12\u00a0g/m² on 640\u00a0m²");
    assertThat(Unbroken.of("in 3 h, 2 ft² and 30–40 mm."))
        .isEqualTo("in 3\u00a0h, 2\u00a0ft² and 30–\u206040\u00a0mm.");
  }

  @Test
  void aShortDateAndYearsFromAndToStayTogether() {
    assertThat(Unbroken.of("Mon 30 November, records 2012-2015 and 1931–1935"))
        .isEqualTo("Mon 30\u00a0November, records 2012-\u20602015 and 1931–\u20601935");
  }

  /** What stands in a template does not come by here. */
  @Test
  void templatesKeepNumbersAndUnitsTogetherThemselves() throws IOException {
    try (Stream<Path> templates = Files.list(Path.of("src/main/jte"))) {
      for (Path template : templates.toList()) {
        assertThat(Files.readString(template))
            .as(template.toString())
            .doesNotContainPattern("\\d (?:%|mm|°)");
      }
    }
  }

  @Test
  void wordsThatBeginLikeAUnitMayBreak() {
    String words = "3 men, 2 Lawns, 5 grasses and 2 hours on 28 May";
    assertThat(Unbroken.of(words)).isEqualTo(words);
  }
}
