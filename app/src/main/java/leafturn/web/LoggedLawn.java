package leafturn.web;

import java.time.LocalDate;
import java.util.Objects;
import leafturn.quantity.DisplayNumber;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import org.jspecify.annotations.Nullable;

/**
 * A lawn as whoever logs on it needs it.
 *
 * @param id id of its sheet
 * @param address its name in addresses
 * @param name what its people call it
 * @param property name of the property it lies on
 * @param timeZone IANA time zone in which its days begin
 * @param today the day it is there
 * @param dayFixed true where that day stays the same, as in a demonstration
 * @param advice the call in one sentence, or why there is none
 * @param cutHeightMm height it is usually cut to, mm, or null when nothing is known of it
 * @param returnedShare share of the clippings usually returned, 0 to 1
 */
public record LoggedLawn(
    String id,
    String address,
    String name,
    String property,
    String timeZone,
    LocalDate today,
    boolean dayFixed,
    String advice,
    @Nullable Double cutHeightMm,
    double returnedShare) {

  /** Lawn and property. */
  public String title() {
    return name + ", " + property;
  }

  /**
   * The height it is usually cut to, as a person would type it: in inches to the tenth, for a ruler
   * gives no more; empty when nothing is known.
   */
  public String cutHeight(Units units) {
    if (cutHeightMm == null) {
      return "";
    }
    return units == Units.US
        ? DisplayNumber.decimals(Measure.HEIGHT.shown(cutHeightMm, units), 1)
        : Measure.HEIGHT.typed(usualMm(), units);
  }

  /** The height that an untouched form means, mm, or null where another one was typed. */
  @Nullable Double untouchedMm(String typed, Units units) {
    return cutHeightMm != null && typed.equals(cutHeight(units)) ? usualMm() : null;
  }

  private double usualMm() {
    return Math.round(Objects.requireNonNull(cutHeightMm) * 10) / 10.0;
  }
}
