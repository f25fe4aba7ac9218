package leafturn.records;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import leafturn.model.weather.WeatherSeries;

/** The daily weather that comes with the program. */
public final class ExampleWeather {
  private static final String NEW_YORK = "/leafturn/examples/new-york-2012-2015.csv";

  private ExampleWeather() {}

  /** New York, 2012 to 2015, at about 40.78 degrees north and 40 m. */
  public static WeatherSeries newYork() {
    try (InputStream stream = ExampleWeather.class.getResourceAsStream(NEW_YORK)) {
      if (stream == null) {
        throw new IllegalStateException(NEW_YORK + " is missing from the program");
      }
      SourceText text = SourceText.of(NEW_YORK, stream.readAllBytes(), WeatherFile.LIMIT_BYTES);
      return WeatherFile.read(text, WeatherFile.Choice.ONLY_SITE).series();
    } catch (IOException e) {
      throw new UncheckedIOException("the weather of the program cannot be read", e);
    }
  }
}
