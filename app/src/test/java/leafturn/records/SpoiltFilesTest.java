package leafturn.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import leafturn.advice.season.WeatherAccount;
import leafturn.model.weather.Site;
import leafturn.records.WeatherFile.Choice;
import org.junit.jupiter.api.Test;

/**
 * Ten thousand spoilt files: each is read, or refused with sentences. Whatever is read must also be
 * usable: weather is summed over a site.
 */
class SpoiltFilesTest {
  private static final long SEED = 20_150_528;
  private static final int FILES_OF_A_KIND = 2_500;
  private static final Site SITE = Site.at(40.78, 40);

  private interface Reader {
    void read(SourceText source);
  }

  private static final Map<String, Reader> READERS =
      Map.of(
          "lawn", LawnFile::read,
          "log", LogFile::read,
          "weather", SpoiltFilesTest::weather,
          "station", SpoiltFilesTest::weather);

  private static void weather(SourceText source) {
    WeatherReading reading =
        WeatherFile.read(source, new Choice(null, source.text().length() % 2 == 0));
    WeatherAccount.of(reading.series(), SITE);
  }

  static String original(String kind) {
    return switch (kind) {
      case "lawn" -> Examples.text("linden-house-front.lawn.json").text();
      case "log" -> Examples.text("heron-bank-play.log.csv").text();
      case "weather" -> weatherOfTwoMonths();
      default -> stationMonth();
    };
  }

  private static String weatherOfTwoMonths() {
    LocalDate first = LocalDate.of(2015, 4, 1);
    return IntStream.range(0, 60)
        .mapToObj(
            day ->
                "%s,%d.5,%d,%.1f,2.1,90,40,4,18"
                    .formatted(first.plusDays(day), 10 + day % 9, day % 7, day % 3 * 0.4))
        .collect(
            Collectors.joining(
                "\n",
                "date,temp_max,temp_min,precipitation,wind,humidity_max_percent,"
                    + "humidity_min_percent,dewpoint_c,radiation_mj_m2\n",
                "\n"));
  }

  private static String stationMonth() {
    return List.of("TMAX", "TMIN", "PRCP", "AWND", "MDPR", "DAPR").stream()
        .map(
            element ->
                "XX000000001201505"
                    + element
                    + (element.endsWith("PR") ? "-9999   " : "   21  S").repeat(31))
        .collect(Collectors.joining("\n"));
  }

  @Test
  void theFilesAreReadBeforeTheyAreSpoilt() {
    assertThat(READERS)
        .allSatisfy((kind, reader) -> reader.read(new SourceText(kind, original(kind))));
  }

  @Test
  void aSpoiltFileIsReadOrRefusedWithSentences() {
    int refused = 0;
    for (String kind : List.of("lawn", "log", "weather", "station")) {
      String original = original(kind);
      for (int file = 0; file < FILES_OF_A_KIND; file++) {
        String spoilt = new Mutations(SEED + file).spoil(original);
        refused += refused(kind, file, spoilt) ? 1 : 0;
      }
    }
    assertThat(refused).isBetween(FILES_OF_A_KIND, 4 * FILES_OF_A_KIND - 1);
  }

  private static boolean refused(String kind, int file, String spoilt) {
    try {
      READERS.getOrDefault(kind, source -> {}).read(new SourceText(kind, spoilt));
      return false;
    } catch (InputException e) {
      assertThat(e.faults())
          .as("%s, seed %d + %d", kind, SEED, file)
          .isNotEmpty()
          .allSatisfy(
              fault -> {
                assertThat(fault).startsWith(kind).hasSizeLessThan(1500);
                assertThat(fault.lines()).hasSize(1);
              });
      return true;
    } catch (RuntimeException e) {
      throw new AssertionError(
          "%s with seed %d + %d was neither read nor refused:%n%s"
              .formatted(kind, SEED, file, spoilt),
          e);
    }
  }
}
