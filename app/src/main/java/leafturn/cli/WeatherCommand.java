package leafturn.cli;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import leafturn.advice.season.WeatherAccount;
import leafturn.model.weather.Site;
import leafturn.records.InputException;
import leafturn.records.WeatherFile;
import leafturn.records.WeatherReading;
import leafturn.reports.WeatherReport;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reads daily weather and tells what it holds. */
@Command(
    name = "weather",
    description = {
      "Reads daily weather; tells gaps, faults and repairs, sums it by month and year, and"
          + " tells the hours of its last day.",
      "FILE is a CSV with the columns date, temp_max, temp_min, precipitation and, if measured,"
          + " wind, humidity_max_percent, humidity_min_percent, dewpoint_c, radiation_mj_m2;"
          + " or a file of NOAA's GHCN-Daily archive (.dly, or one value a line).",
      ""
    },
    footer = {
      "",
      "Example: leafturn weather new-york-2012-2015.csv --latitude 40.78 --elevation 40"
          + " --longitude -73.97 --time-zone America/New_York"
    })
final class WeatherCommand implements Callable<Integer> {
  @Parameters(paramLabel = "FILE", description = "Daily weather.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private Path file;

  @Mixin private final WeatherChoice choice = new WeatherChoice();

  @Option(
      names = "--latitude",
      paramLabel = "DEGREES",
      description =
          "Degrees north, needed for reference evapotranspiration and hours; south is negative.")
  private @Nullable Double latitudeDeg;

  @Option(
      names = "--longitude",
      paramLabel = "DEGREES",
      description = "Degrees east, for hours on the clock; west is negative.")
  private @Nullable Double longitudeDeg;

  @Option(
      names = "--time-zone",
      paramLabel = "ZONE",
      description = "IANA time zone such as America/New_York, for hours on the clock.")
  private @Nullable ZoneId timeZone;

  @Option(
      names = "--elevation",
      paramLabel = "M",
      defaultValue = "0",
      description = "Metres above sea level (default: ${DEFAULT-VALUE}).")
  private double elevationM;

  @Option(
      names = "--wind-height",
      paramLabel = "M",
      defaultValue = "2",
      description = "Height of the wind measurement (default: ${DEFAULT-VALUE} m).")
  private double windHeightM;

  @Mixin private final Printing printing = new Printing();

  @Mixin private final HelpOption help = new HelpOption();

  @Override
  public Integer call() {
    Site place = place();
    WeatherReading reading = WeatherFile.read(file, choice.asked());
    WeatherReport report = WeatherReport.of(reading, WeatherAccount.of(reading.series(), place));
    printing.print(() -> report, report::lines);
    return ExitCode.DONE;
  }

  private @Nullable Site place() {
    if (latitudeDeg == null) {
      return null;
    }
    try {
      return new Site(latitudeDeg, elevationM, windHeightM, longitudeDeg, timeZone);
    } catch (IllegalArgumentException e) {
      throw new InputException(
          "The site given by --latitude, --longitude, --elevation and --wind-height is wrong: %s."
              .formatted(e.getMessage()));
    }
  }
}
