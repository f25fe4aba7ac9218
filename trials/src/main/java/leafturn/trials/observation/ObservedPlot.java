package leafturn.trials.observation;

import java.util.Map;
import java.util.TreeMap;

/**
 * A plot of the layout as far as the checks of its readings need it.
 *
 * @param code as readings name it
 * @param unit the yard, block or pair it lies in
 * @param arm the treatment
 * @param areaM2 its area, m2; NaN where it is not known
 * @param traits what lies with the plot and not with the treatment, by name: side, slope, mower
 */
public record ObservedPlot(
    String code, String unit, String arm, double areaM2, Map<String, String> traits) {
  public ObservedPlot {
    traits = java.util.Collections.unmodifiableMap(new TreeMap<>(traits));
  }

  /** A plot of which nothing else is known. */
  public static ObservedPlot of(String code, String unit, String arm) {
    return new ObservedPlot(code, unit, arm, Double.NaN, Map.of());
  }
}
