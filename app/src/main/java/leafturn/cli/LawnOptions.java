package leafturn.cli;

import java.nio.file.Path;
import leafturn.records.LawnFile;
import leafturn.records.LawnReading;
import leafturn.records.WeatherReading;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The arguments of a command that runs a lawn under its weather: mix them in. */
final class LawnOptions {
  @Parameters(paramLabel = "LAWN", description = "Lawn description, a JSON file.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private Path file;

  @Mixin private final WeatherOptions weather = new WeatherOptions();

  LawnReading read() {
    return LawnFile.read(file);
  }

  WeatherReading readWeather() {
    return weather.read();
  }

  /** The lawn description. */
  Path file() {
    return file;
  }

  /** The weather record. */
  Path weatherFile() {
    return weather.file();
  }
}
