package leafturn.advice.call;

import leafturn.model.weather.generator.WeatherForecast;
import org.jspecify.annotations.Nullable;

/**
 * How many possible seasons advice is reckoned over, and which.
 *
 * @param count number of seasons, 1 to 2000
 * @param seed the seasons of a seed are always the same
 * @param forecast what the first days are to follow, or null
 */
public record SeasonsAsked(int count, long seed, @Nullable WeatherForecast forecast) {
  /** Fewest seasons that advice is to rest on. */
  public static final int USUAL_COUNT = 200;

  /** The seasons that every call takes unless another seed is asked for. */
  public static final SeasonsAsked USUAL = new SeasonsAsked(USUAL_COUNT, 1);

  private static final int MOST = 2000;

  /** Without a forecast. */
  public SeasonsAsked(int count, long seed) {
    this(count, seed, null);
  }

  public SeasonsAsked {
    if (count < 1 || count > MOST) {
      throw new IllegalArgumentException(
          "the number of possible seasons must lie from 1 to " + MOST + ", but is " + count);
    }
  }
}
