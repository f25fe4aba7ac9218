package leafturn.advice.evidence;

import java.time.Year;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import leafturn.model.lawn.DailyTerms;
import leafturn.model.lawn.DayListener;
import leafturn.model.lawn.LawnEquations;
import leafturn.model.lawn.LawnModel;
import leafturn.model.lawn.LawnRun;
import leafturn.model.lawn.LawnState;
import leafturn.model.lawn.ProgrammeKeeper;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.lawn.SpinUp;
import leafturn.model.lawn.YearAccount;
import leafturn.model.lawn.YearBook;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;

/** Ground on which plots are run: a weather record repeated year after year. */
final class TrialGround {
  /** Years of common keeping before a treatment. */
  static final int PAST_YEARS = 4;

  /** Longest treatment. */
  static final int MOST_YEARS = 80;

  private final DailyTerms terms;

  private TrialGround(DailyTerms terms) {
    this.terms = terms;
  }

  /** The record as it is, beginning on a first of January. */
  static TrialGround of(WeatherSeries weather, Site site) {
    return new TrialGround(
        SpinUp.terms(new SiteClimate(weather, site), PAST_YEARS + MOST_YEARS, 0));
  }

  /** The record with its rain multiplied. */
  static TrialGround of(WeatherSeries weather, Site site, double rainFactor) {
    Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
    for (Quantity quantity : Quantity.values()) {
      double[] days = new double[weather.days()];
      for (int day = 0; day < days.length; day++) {
        days[day] = weather.value(quantity, day) * (quantity == Quantity.RAIN_MM ? rainFactor : 1);
      }
      values.put(quantity, days);
    }
    return of(new WeatherSeries(weather.firstDay(), values), site);
  }

  /** Years of the treatment, one account each. */
  List<YearAccount> run(Plot plot, int years) {
    return run(plot, years, UnaryOperator.identity(), DayListener.NONE);
  }

  /**
   * As {@link #run(Plot, int)}.
   *
   * @param before changes the stores on the eve of the treatment
   * @param listener hears the days of the treatment
   */
  List<YearAccount> run(
      Plot plot, int years, UnaryOperator<double[]> before, DayListener listener) {
    int from = firstDay(PAST_YEARS);
    LawnState eve = eve(plot, from);
    LawnEquations equations = plot.equations(plot.treatment());
    LawnState start = new LawnState(before.apply(eve.stores()), eve.soilC());
    LawnRun run = new LawnRun(equations, start, terms);
    YearBook book = new YearBook();
    run.live(
        from,
        firstDay(PAST_YEARS + years),
        new ProgrammeKeeper(plot.treatment().programme(plot.heightMm()), equations),
        today -> {
          book.dayDone(today);
          listener.dayDone(today);
        });
    return book.years();
  }

  private LawnState eve(Plot plot, int lastDay) {
    LawnEquations equations = plot.equations(plot.past());
    LawnRun run =
        new LawnRun(equations, LawnModel.startState(equations, plot.heightMm()), terms);
    run.live(
        0,
        lastDay,
        new ProgrammeKeeper(plot.past().programme(plot.heightMm()), equations),
        DayListener.NONE);
    return run.state();
  }

  private int firstDay(int year) {
    int day = 0;
    for (int begun = 0; begun < year; begun++) {
      day += Year.of(terms.year(day)).length();
    }
    return day;
  }
}
