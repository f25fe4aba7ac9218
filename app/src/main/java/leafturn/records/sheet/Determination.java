package leafturn.records.sheet;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import leafturn.quantity.LabelNutrient;
import leafturn.quantity.SoilLayer;
import leafturn.records.Choice;
import leafturn.records.JsonObject;
import leafturn.records.Numbers;
import org.jspecify.annotations.Nullable;

/**
 * One figure of a soil test, as the laboratory reported it.
 *
 * @param analyte what was determined
 * @param value the figure in {@code unit}, not below the detection limit; null when it lay below
 * @param detectionLimit least that the method finds, in {@code unit}; null when not told
 * @param unit unit of both
 * @param asOxide true when phosphorus stands as P2O5 or potassium as K2O
 */
public record Determination(
    Analyte analyte,
    @Nullable Double value,
    @Nullable Double detectionLimit,
    SoilUnit unit,
    boolean asOxide) {

  /**
   * @param seen the analytes read before, to which this one is added
   */
  static Determination read(JsonObject json, Set<Analyte> seen) {
    Analyte analyte = Choice.readRequired(json, "analyte", Analyte.class);
    if (analyte != null && !seen.add(analyte)) {
      json.fault("analyte", Choice.word(analyte) + " stands in the list already; keep one.");
    }
    SoilUnit unit = Choice.readRequired(json, "unit", SoilUnit.class);
    double low = analyte == null ? 0 : analyte.lowest();
    double high = Analyte.highest(unit == null ? SoilUnit.PPM : unit);
    String symbol = unit == null ? "" : unit.word();
    Double value = json.number("value", low, high, symbol);
    Double limit = json.number("detectionLimit", low, high, symbol);
    boolean asOxide = Boolean.TRUE.equals(json.flag("asOxide"));
    Determination read =
        new Determination(
            analyte == null ? Analyte.PH : analyte,
            value,
            limit,
            unit == null ? SoilUnit.PH : unit,
            asOxide);
    if (analyte != null && unit != null) {
      read.checkTogether(json);
    }
    json.refuseOthers();
    return read;
  }

  private void checkTogether(JsonObject json) {
    if (!analyte.units().contains(unit)) {
      json.fault(
          "unit",
          "%s is not reported in %s; give one of %s."
              .formatted(Choice.word(analyte), Choice.word(unit), words(analyte.units())));
    }
    if (!json.has("value") && !json.has("detectionLimit")) {
      json.missing("value", "the figure, or detectionLimit when it lay below");
    }
    if (value != null && detectionLimit != null && value < detectionLimit) {
      json.fault(
          "value",
          "%s is below the detection limit, %s; leave it out, which says that it lay below."
              .formatted(Numbers.plain(value), Numbers.plain(detectionLimit)));
    }
    if (asOxide && !analyte.statedAsOxide()) {
      json.fault("asOxide", "only phosphorus and potassium are stated as oxides; leave it out.");
    }
  }

  private static String words(List<SoilUnit> units) {
    return String.join(", ", units.stream().map(Choice::word).toList());
  }

  /** True when the figure lay below the detection limit. */
  public boolean belowDetectionLimit() {
    return value == null;
  }

  /**
   * The figure in mg of the element per kg of soil; none when it lay below the detection limit or
   * its unit measures something else.
   *
   * @param layer the layer of soil an amount per area lies in, or null when its mass is not known
   */
  public OptionalDouble mgPerKg(@Nullable SoilLayer layer) {
    if (value == null) {
      return OptionalDouble.empty();
    }
    OptionalDouble found = unit.mgPerKg(value, layer);
    if (!asOxide || found.isEmpty()) {
      return found;
    }
    LabelNutrient nutrient =
        analyte == Analyte.PHOSPHORUS ? LabelNutrient.PHOSPHORUS : LabelNutrient.POTASSIUM;
    return OptionalDouble.of(nutrient.elementFromOxide(found.getAsDouble()));
  }
}
