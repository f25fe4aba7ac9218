package leafturn.advice.evidence;

import java.time.Year;
import java.util.EnumMap;
import java.util.Map;
import leafturn.model.lawn.DailyTerms;
import leafturn.model.lawn.DayListener;
import leafturn.model.lawn.LawnEquations;
import leafturn.model.lawn.LawnModel;
import leafturn.model.lawn.LawnRun;
import leafturn.model.lawn.LawnState;
import leafturn.model.lawn.ProgrammeKeeper;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.lawn.SpinUp;
import leafturn.model.lawn.YearBook;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;

/**
 * Ground on which plots are run: a weather record of whole years, repeated from its first year on.
 */
final class TrialGround {
  /** Years of common keeping before a treatment. */
  static final int PAST_YEARS = 4;

  /** N of the common years, kg/ha. */
  static final double PAST_N = 147;

  private static final int MOST_YEARS = 30;

  private final DailyTerms terms;

  private TrialGround(DailyTerms terms) {
    this.terms = terms;
  }

  /**
   * A site with its weather.
   *
   * @param weather at least one whole year, beginning on a first of January
   * @param rainFactor what each day's rain is multiplied by
   */
  static TrialGround of(WeatherSeries weather, Site site, double rainFactor) {
    SiteClimate climate = new SiteClimate(withRain(weather, rainFactor), site);
    return new TrialGround(SpinUp.terms(climate, PAST_YEARS + MOST_YEARS, 0));
  }

  private static WeatherSeries withRain(WeatherSeries weather, double factor) {
    Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
    for (Quantity quantity : Quantity.values()) {
      double[] days = new double[weather.days()];
      for (int day = 0; day < days.length; day++) {
        days[day] = weather.value(quantity, day) * (quantity == Quantity.RAIN_MM ? factor : 1);
      }
      values.put(quantity, days);
    }
    return new WeatherSeries(weather.firstDay(), values);
  }

  /** A plot under a treatment after the common years. */
  Course run(Plot plot, Treatment treatment, int years) {
    return run(plot, treatment, years, DayListener.NONE);
  }

  /** As {@link #run(Plot, Treatment, int)}, with a listener to the treatment's days. */
  Course run(Plot plot, Treatment treatment, int years, DayListener listener) {
    return run(plot, treatment, past(plot, treatment.past(PAST_N)), years, listener);
  }

  /** State of a plot after {@link #PAST_YEARS} of a treatment. */
  LawnState past(Plot plot, Treatment treatment) {
    LawnEquations equations = plot.equations(treatment);
    LawnState start = LawnModel.startState(equations, plot.heightMm());
    return run(plot, treatment, start, new Span(1 - PAST_YEARS, PAST_YEARS), DayListener.NONE)
        .end();
  }

  /** A plot from a state on, through years of weather beginning with the record's first. */
  Course run(Plot plot, Treatment treatment, LawnState start, int years, DayListener listener) {
    return run(plot, treatment, start, new Span(1, years), listener);
  }

  /**
   * Years of a run.
   *
   * @param first year of the record it begins with, 1 for the first; 0 and below for the past
   * @param years number of years
   */
  record Span(int first, int years) {}

  /** A plot from a state on, through a span of the repeated weather. */
  Course run(Plot plot, Treatment treatment, LawnState start, Span span, DayListener listener) {
    LawnEquations equations = plot.equations(treatment);
    LawnRun run = new LawnRun(equations, start, terms);
    YearBook book = new YearBook();
    run.live(
        firstDay(span.first()),
        firstDay(span.first() + span.years()),
        new ProgrammeKeeper(treatment.programme(plot.heightMm()), equations),
        today -> {
          book.dayDone(today);
          listener.dayDone(today);
        });
    return new Course(book.years(), run.state());
  }

  private int firstDay(int year) {
    int day = 0;
    for (int begun = 1 - PAST_YEARS; begun < year; begun++) {
      day += Year.of(terms.year(day)).length();
    }
    return day;
  }
}
