package leafturn.records.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import leafturn.records.exchange.Findings.Finding;
import leafturn.records.sheet.Property;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which weather station a property that is imported follows. */
class PropertyStationTest extends ImportingTest {
  @ParameterizedTest
  @CsvSource({
    "40.78, -73.97, 40, true",
    "41.2, -73.9, , true",
    "41.5, -73.9, 40, false",
    "40.78, -75.5, 40, false",
    "40.78, -73.97, 700, false",
    "40.78, , 40, false",
    "-40.4, -73.9, 40, false"
  })
  void theOnlyStationIsThatOfAPropertyKnownToLieNear(
      double latitude, @Nullable Double longitude, @Nullable Double elevation, boolean near) {
    Preview preview =
        book.properties(
            "property,latitude,longitude,elevation_m,time_zone\nFern,%s,%s,%s,UTC\n"
                .formatted(
                    latitude,
                    longitude == null ? "" : longitude,
                    elevation == null ? "" : elevation));
    Arrivals.NewSheet<?> sheet = preview.arrivals().sheets().get(0);
    assertThat(((Property) sheet.content()).station()).isEqualTo(near ? ImportBook.STATION : null);
    assertThat(sheet.words())
        .isEqualTo(
            near ? "Property Fern, weather of Hill" : "Property Fern, no weather station yet");
    assertThat(preview.notes().toString())
        .isEqualTo(
            near
                ? "[]"
                : "[No weather station yet, so no advice: Fern; Hill, the only station of the book,"
                    + " is not known to lie near: it or they have no longitude, or they lie more"
                    + " than 100 km (62 miles) or 500 m (1,640 ft) of height apart (our judgement)."
                    + " Name one in a column called station, or choose one on the property’s"
                    + " page.]");
  }

  @Test
  void aStationThatIsNamedThoughFarAwayIsARemark() {
    Preview preview =
        book.properties("property,latitude,longitude,time_zone,station\nFern,60.2,10.7,UTC,Hill\n");
    assertThat(preview.ready()).isTrue();
    assertThat(preview.remarks().kept())
        .containsExactly(
            new Finding(
                "line 2, column E / station",
                "The record “Hill” was measured 5,923 km (3,681 miles) away: beyond 100 km (62"
                    + " miles) or 500 m (1,640 ft) of height (our judgement) it need not be the"
                    + " weather of this property."));
  }
}
