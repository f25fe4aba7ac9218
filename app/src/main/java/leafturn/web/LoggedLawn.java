package leafturn.web;

import java.time.LocalDate;
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

  /** The height it is usually cut to, as a person would type it; empty when nothing is known. */
  public String cutHeight(Units units) {
    return cutHeightMm == null
        ? ""
        : Measure.HEIGHT.typed(Math.round(cutHeightMm * 10) / 10.0, units);
  }
}
