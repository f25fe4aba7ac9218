package leafturn.records;

import java.time.LocalDate;
import leafturn.model.weather.WeatherSeries.Quantity;

/**
 * A value that was not in the file.
 *
 * @param day its day
 * @param quantity what it is
 * @param value the value taken
 * @param rule how it was found
 */
public record FilledValue(LocalDate day, Quantity quantity, double value, FillRule rule) {

  /** How a missing value is found. */
  public enum FillRule {
    /** On the straight line between the days before and after, or the nearest day at an end. */
    BETWEEN_NEIGHBOURS("between its neighbours"),
    /** Mean of the same calendar day in the other years of the file. */
    SAME_DAY_OF_OTHER_YEARS("mean of the same day in other years"),
    /** No rain. */
    NO_RAIN("no rain assumed"),
    /** An equal share of a total read once for several days. */
    SHARE_OF_TOTAL("equal share of a total of several days");

    private final String inWords;

    FillRule(String inWords) {
      this.inWords = inWords;
    }

    /** The rule in a few words. */
    public String inWords() {
      return inWords;
    }
  }
}
