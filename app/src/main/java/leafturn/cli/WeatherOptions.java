package leafturn.cli;

import java.nio.file.Path;
import leafturn.records.WeatherFile;
import leafturn.records.WeatherReading;
import picocli.CommandLine.Mixin;
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

  @Mixin private final WeatherChoice choice = new WeatherChoice();

  WeatherReading read() {
    return WeatherFile.read(file, choice.asked());
  }

  Path file() {
    return file;
  }
}
