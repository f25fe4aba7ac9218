package leafturn.cli;

import java.nio.file.Path;
import leafturn.records.WeatherFile;
import leafturn.records.WeatherReading;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options of a command that needs daily weather: mix them in. */
final class WeatherOptions {
  @Option(
      names = "--weather",
      required = true,
      paramLabel = "FILE",
      description = "Daily weather of the lawn's site; 'leafturn weather --help' tells its form.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private Path file;

  @Option(
      names = "--site",
      paramLabel = "SITE",
      description = "The location or station to read, where the file has several.")
  private @Nullable String site;

  @Option(names = "--fill", description = "Fills gaps of more than three days too.")
  private boolean fill;

  WeatherReading read() {
    return WeatherFile.read(file, new WeatherFile.Choice(site, fill));
  }

  Path file() {
    return file;
  }
}
