package leafturn.records.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import leafturn.model.Parameters;
import leafturn.model.grass.Species;
import leafturn.records.SourceText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class NewPropertyTest {
  @ParameterizedTest
  @EnumSource(
      value = Species.class,
      names = {"TALL_FESCUE", "PERENNIAL_RYEGRASS", "KENTUCKY_BLUEGRASS"})
  void theCutHeightFollowsTheGrassWhereNoneIsChosen(Species grass) {
    assertThat(heightMm(grass, "{}")).isEqualTo(Parameters.of(grass).get("Href"));
    assertThat(heightMm(grass, "{\"mowing\": {\"heightMm\": 50}}")).isEqualTo(50);
  }

  private static double heightMm(Species grass, String programme) {
    String document =
        """
        {"property": {"name": "Mill", "latitudeDeg": 40, "timeZone": "UTC"},
         "lawn": {"name": "Lawn", "grass": "%s"}, "programme": %s}
        """
            .formatted(grass.commonName(), programme);
    NewProperty begun =
        NewProperty.read(
            new SourceText("form", document), null, LocalDate.of(2015, 6, 1), address -> false);
    String written = Kind.PROGRAMME.write(begun.programme());
    return Double.parseDouble(written.replaceAll("(?s).*\"heightMm\"\\s*:\\s*([0-9.]+).*", "$1"));
  }
}
