package leafturn.model.lawn;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leafturn.model.Parameters;
import leafturn.model.Stores;
import leafturn.model.grass.Species;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import org.junit.jupiter.api.Test;

/**
 * Every state and flow of ten days against a trace that other implementations of the same equations
 * agreed on (checks/ten-day-trace.txt), to 1e-8 relative.
 */
class TenDayTracePublishedTest {
  private static final double RELATIVE = 1e-8;
  private static final int FIRST_DAY = 130;
  private static final double[] MINIMUM_C = {8, 10, 12, 11, 9, 13, 16, 17, 12, 10};
  private static final double[] MAXIMUM_C = {19, 24, 22, 17, 21, 27, 30, 25, 20, 22};
  private static final double[] RAIN_MM = {0, 0, 14, 31, 0, 0, 2.5, 60, 25, 0};
  private static final double[] WIND_M_PER_S = {3.2, 2.5, 4.0, 5.5, 3.0, 2.0, 2.8, 6.0, 4.5, 3.5};
  private static final double[] RETURNED = {0, 0, 1, 0, 0, 0, 0, 0, 0.5, 0};

  private final List<String> differences = new ArrayList<>();
  private int compared;

  @Test
  void everyStateAndFlowIsMet() throws IOException {
    List<String> lines = traceLines();
    LawnEquations equations =
        new LawnEquations(
            Parameters.of(Species.TALL_FESCUE)
                .with(Map.of("irr", 0.6, "mincut", 1.0, "Dr0", 30.0)));
    double[] stores = StartState.of(equations, 76);
    stores[Stores.IRRIGATION_ACCOUNT_MM] = 5;
    LawnRun run = new LawnRun(equations, new LawnState(stores, 13), terms());
    compare("start ", lines, run);

    run.live(
        0,
        RAIN_MM.length,
        new TraceKeeper(),
        today -> compare("day " + (FIRST_DAY + today.day()) + " ", lines, today));

    assertThat(differences).isEmpty();
    assertThat(compared).as("numbers compared").isEqualTo(10 * 72 + 56);
  }

  private void compare(String when, List<String> lines, LawnRun run) {
    List<String> names = DailyRow.names();
    double[] values = DailyRow.of(run);
    for (String line : lines) {
      if (!line.startsWith(when)) {
        continue;
      }
      String element = "";
      for (String word : line.substring(when.length()).split(" ")) {
        int equals = word.indexOf('=');
        if (equals < 0) {
          element = word.equals("flows") ? "" : word + "_";
        } else {
          String name = element + word.substring(0, equals);
          double expected = Double.parseDouble(word.substring(equals + 1));
          compare(when + name, expected, values[names.indexOf(name)]);
        }
      }
    }
  }

  private void compare(String what, double expected, double actual) {
    compared++;
    if (!(Math.abs(actual - expected) <= RELATIVE * Math.abs(expected))) {
      differences.add(what + ": expected " + expected + ", was " + actual);
    }
  }

  private static DailyTerms terms() {
    WeatherSeries weather =
        new WeatherSeries(
            LocalDate.ofYearDay(2013, FIRST_DAY),
            Map.of(
                Quantity.MINIMUM_C, MINIMUM_C,
                Quantity.MAXIMUM_C, MAXIMUM_C,
                Quantity.RAIN_MM, RAIN_MM,
                Quantity.WIND_M_PER_S, WIND_M_PER_S));
    return DailyTerms.asRecorded(
        new SiteClimate(weather, Site.at(40.78, 40)), 0, RAIN_MM.length, 13);
  }

  private static List<String> traceLines() throws IOException {
    try (InputStream stream =
        TenDayTracePublishedTest.class.getResourceAsStream("/checks/ten-day-trace.txt")) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
  }

  /** Feeds on the second day; mows every third day what has grown a millimetre. */
  private static final class TraceKeeper implements Keeper {
    @Override
    public void morning(LawnRun run) {
      if (run.day() == 1) {
        run.feed(2.5, 2.5, 0.4, 2.0);
      }
    }

    @Override
    public void evening(LawnRun run) {
      if (run.daysSinceMowing() >= 3 && run.heightMm() - 76 >= 1) {
        run.cut(76, RETURNED[run.day()]);
      }
    }
  }
}
