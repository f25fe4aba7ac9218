package leafturn.advice.call;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * The weather a call is reckoned over: what may come after its day, taken from years on record.
 *
 * @param count number of possible seasons, 1 or more
 * @param days length of each, days from the day of the call, 1 or more
 * @param madeFrom where they come from, in words that can follow "made from", for instance "the
 *     days after 29 May in each year from 1986 to 2014"
 * @param forecastUntil last day of the forecast that they follow, or null where they follow none
 */
public record PossibleSeasons(
    int count, int days, String madeFrom, @Nullable LocalDate forecastUntil) {
  /** Seasons that follow no forecast. */
  public PossibleSeasons(int count, int days, String madeFrom) {
    this(count, days, madeFrom, null);
  }

  public PossibleSeasons {
    if (count < 1 || days < 1) {
      throw new IllegalArgumentException(
          "possible seasons need a count and a length of 1 or more, but got "
              + count
              + " of "
              + days
              + " days");
    }
  }
}
