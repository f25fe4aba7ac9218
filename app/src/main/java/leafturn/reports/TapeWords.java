package leafturn.reports;

import java.util.Locale;
import java.util.regex.Pattern;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.trials.design.layout.DroppedPlot;
import leafturn.trials.design.layout.TapedPlace;

/** Places and areas of a layout in a reader's units, the same on page, paper, map and terminal. */
public final class TapeWords {
  private static final Pattern AMOUNT = Pattern.compile("(\\d+(?:\\.\\d+)?) (m²|m)(?![\\w²])");

  private final Units units;

  /**
   * @param units the reader's
   */
  public TapeWords(Units units) {
    this.units = units;
  }

  /** A distance on a tape, without its unit. */
  public String distance(double distanceM) {
    return String.format(Locale.ROOT, "%.2f", Measure.DISTANCE.shown(distanceM, units));
  }

  /** The unit of distances. */
  public String distanceUnit() {
    return Measure.DISTANCE.unit(units).symbol();
  }

  /** An area, without its unit. */
  public String area(double areaM2) {
    return String.format(Locale.ROOT, "%.1f", Measure.AREA.shown(areaM2, units));
  }

  /** The unit of areas. */
  public String areaUnit() {
    return Measure.AREA.unit(units).symbol();
  }

  /** A sentence of a layout, which has its lengths in m and its areas in m². */
  public String sentence(String metric) {
    return units == Units.METRIC
        ? metric
        : AMOUNT
            .matcher(metric)
            .replaceAll(
                amount -> {
                  double kept = Double.parseDouble(amount.group(1));
                  return amount.group(2).equals("m")
                      ? distance(kept) + " " + distanceUnit()
                      : area(kept) + " " + areaUnit();
                });
  }

  /** A place: "12.30 m from A, 8.45 m from B, on the left from A to B". */
  public String place(TapedPlace place) {
    return "%1$s %2$s from A, %3$s %2$s from B, on the %4$s from A to B"
        .formatted(
            distance(place.fromAM()), distanceUnit(), distance(place.fromBM()), place.side());
  }

  /** Where a dropped plot lies: "X1, south-west of B2-1, its middle 12.30 m from A, ...". */
  public String dropped(DroppedPlot plot) {
    return "%s, %s, its middle %s".formatted(plot.mark(), plot.beside(), place(plot.middle()));
  }
}
