package leafturn.records.round;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import leafturn.quantity.SoilLayer;
import leafturn.records.Choice;
import leafturn.records.SoilFields;
import leafturn.records.sheet.Analyte;
import leafturn.records.sheet.Determination;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.SoilTestSheet;
import leafturn.records.sheet.SoilUnit;
import org.jspecify.annotations.Nullable;

/**
 * The figures of a soil test that a lawn's description leaves empty, as far as they can be turned
 * into what the model takes without guessing.
 */
final class SoilTestFigures {
  /** Cores of so nearly the same depth speak for the same soil, cm; our judgement. */
  private static final double SAME_DEPTH_CM = 1;

  /** Depths the model takes, cm, as the lawn's description does. */
  private static final double SHALLOWEST_CM = 2;

  private static final double DEEPEST_CM = 40;
  private static final double PPM_PER_PERCENT = 1e4;

  /** Names of the extractant whose scale the model's phosphorus and potassium have. */
  private static final Set<String> MEHLICH_3 = Set.of("mehlich3", "mehlichiii", "m3");

  private final LawnSheet lawn;
  private final SoilTestSheet test;
  private final List<Analyte> taken = new ArrayList<>();
  private final List<String> notTaken = new ArrayList<>();
  private final SoilFields soil;

  SoilTestFigures(LawnSheet lawn, SoilTestSheet test) {
    this.lawn = lawn;
    this.test = test;
    Double phosphorus = figure(Analyte.PHOSPHORUS, 1, 0, 2000);
    Double potassium = figure(Analyte.POTASSIUM, 1, 0, 5000);
    Double organic = figure(Analyte.ORGANIC_MATTER, PPM_PER_PERCENT, 0.1, 30);
    SoilFields given = lawn.soil();
    boolean depthTaken = !taken.isEmpty() && depthCm() == null;
    this.soil =
        new SoilFields(
            given.texture(),
            given.fieldCapacity(),
            given.wiltingPoint(),
            given.saturation(),
            given.curveNumber(),
            organic == null ? given.organicMatterPercent() : organic,
            depthTaken ? Double.valueOf(test.depthCm()) : given.testDepthCm(),
            given.bulkDensityGPerCm3(),
            phosphorus == null ? given.phosphorusPpm() : phosphorus,
            potassium == null ? given.potassiumPpm() : potassium,
            takesExtracted() && given.extractant() == null
                ? test.extractant()
                : given.extractant());
  }

  /** The lawn's soil with the figures taken. */
  SoilFields soil() {
    return soil;
  }

  /** What was taken from the test. */
  List<Analyte> taken() {
    return taken;
  }

  /** What was wanted of the test and could not be taken, as the end of a sentence each. */
  List<String> notTaken() {
    return notTaken;
  }

  /** True when a figure was taken whose extractant nobody told. */
  boolean extractantAssumed() {
    return takesExtracted() && test.extractant() == null;
  }

  /** True when the lawn's own description gives a figure. */
  static boolean described(LawnSheet lawn, Analyte analyte) {
    return switch (analyte) {
      case PHOSPHORUS ->
          lawn.soil().phosphorusPpm() != null || lawn.parameters().containsKey("stp0");
      case POTASSIUM -> lawn.soil().potassiumPpm() != null || lawn.parameters().containsKey("stk0");
      default -> lawn.soil().organicMatterPercent() != null || lawn.parameters().containsKey("om");
    };
  }

  private boolean takesExtracted() {
    return taken.contains(Analyte.PHOSPHORUS) || taken.contains(Analyte.POTASSIUM);
  }

  private @Nullable Double depthCm() {
    Double own = lawn.parameters().get("depth");
    return own == null ? lawn.soil().testDepthCm() : own;
  }

  private @Nullable Double bulkDensityGPerCm3() {
    Double own = lawn.parameters().get("bd");
    return own == null ? lawn.soil().bulkDensityGPerCm3() : own;
  }

  private @Nullable Double figure(Analyte analyte, double ppmPerUnit, double low, double high) {
    Determination found = test.of(analyte).orElse(null);
    if (found == null || described(lawn, analyte)) {
      return null;
    }
    Double densityGPerCm3 = bulkDensityGPerCm3();
    SoilLayer layer = densityGPerCm3 == null ? null : new SoilLayer(test.depthCm(), densityGPerCm3);
    OptionalDouble ppm = found.mgPerKg(layer);
    String why = whyNot(found, analyte != Analyte.ORGANIC_MATTER, ppm);
    double value = ppm.orElse(0) / ppmPerUnit;
    if (why.isEmpty() && (value < low || value > high)) {
      why = "it lies outside what the model was made for";
    }
    if (!why.isEmpty()) {
      notTaken.add(" %s is not used: %s.".formatted(Choice.word(analyte), why));
      return null;
    }
    taken.add(analyte);
    return value;
  }

  /** Why a figure cannot be taken; empty where it can. */
  private String whyNot(Determination found, boolean extracted, OptionalDouble ppm) {
    if (found.belowDetectionLimit()) {
      return "it lay below the detection limit, and how far below nobody knows";
    }
    if (ppm.isEmpty()) {
      return found.unit() == SoilUnit.MG_PER_LITRE
          ? "mg/L is of a scoop of soil whose mass the test does not tell"
          : "%s needs the soil's bulk density, which the lawn's description does not give"
              .formatted(found.unit().word());
    }
    if (extracted && !mehlich3(test.extractant())) {
      return "it was extracted with %s, the model's scale is that of Mehlich-3, and figures of different extractants do not convert"
          .formatted(test.extractant());
    }
    if (extracted && !mehlich3(lawn.soil().extractant())) {
      return "the lawn's description names %s, and figures of different extractants do not compare"
          .formatted(lawn.soil().extractant());
    }
    Double depth = depthCm();
    if (depth != null && Math.abs(depth - test.depthCm()) > SAME_DEPTH_CM) {
      return "its cores have another depth than the lawn's description";
    }
    if (depth == null && test.depthCm() < SHALLOWEST_CM) {
      return "its cores are too shallow for the model";
    }
    return depth == null && test.depthCm() > DEEPEST_CM
        ? "its cores reach deeper than the model’s soil"
        : "";
  }

  /** True for that extractant, and for none told, which stands for it. */
  private static boolean mehlich3(@Nullable String extractant) {
    return extractant == null
        || MEHLICH_3.contains(extractant.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", ""));
  }
}
