package leafturn.advice.call;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * One lawn of a round with its call.
 *
 * @param slug its name in addresses: lower-case letters, digits and single hyphens
 * @param propertyName the property it lies on
 * @param lawnName the lawn's own name there
 * @param description what it is and how it is kept
 * @param lastEntry the last entry of its log in words, for instance "Mown on 21 May, returned"; may
 *     be empty
 * @param call the call for the round's day
 */
public record LawnOnRound(
    String slug,
    String propertyName,
    String lawnName,
    Description description,
    String lastEntry,
    Call call) {
  private static final Pattern SLUG = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  public LawnOnRound {
    if (!SLUG.matcher(slug).matches()) {
      throw new IllegalArgumentException(
          "a lawn's name in addresses is lower-case letters, digits and single hyphens, but is \""
              + slug
              + "\"");
    }
  }

  /**
   * True when there is something to decide today: to mow, to wait for a day, or to cut twice. On
   * the day of a mowing that is done.
   */
  public boolean needsDecision() {
    return call.choice() != Choice.LEAVE_ALONE && !call.on().equals(call.today().lastMown());
  }

  /**
   * The lawn in words.
   *
   * @param grass the grass, for instance "tall fescue"
   * @param areaM2 area, m2, or null when nobody has measured it
   * @param soil the soil in a few words
   * @param habit how it is mown and what becomes of the clippings
   * @param soilStart where soil phosphorus and potassium start in the model, for instance "from an
   *     assumed start"
   */
  public record Description(
      String grass, @Nullable Double areaM2, String soil, String habit, String soilStart) {}
}
