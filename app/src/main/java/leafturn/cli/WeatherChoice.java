package leafturn.cli;

import leafturn.records.WeatherFile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What is read of a file of daily weather: mix it in. */
final class WeatherChoice {
  @Option(
      names = "--site",
      paramLabel = "SITE",
      description = "The location or station to read, where the file has several.")
  private @Nullable String site;

  @Option(
      names = "--fill",
      description =
          "Fills gaps of more than three days too: with the mean of the same day in the other"
              + " years.")
  private boolean fill;

  WeatherFile.Choice asked() {
    return new WeatherFile.Choice(site, fill);
  }
}
