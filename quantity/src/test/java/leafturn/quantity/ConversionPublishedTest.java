package leafturn.quantity;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Units, label nutrients and soil layers against exact definitions and published conversions. */
class ConversionPublishedTest {
  static List<PublishedCheck> conversions() {
    return PublishedCheck.of(ConversionPublishedTest.class, "conversions.csv");
  }

  @ParameterizedTest
  @MethodSource("conversions")
  void agreesWithItsSource(PublishedCheck check) {
    check.agreesWith(
        switch (check.function()) {
          case "unit" -> unit(check.text("from")).to(unit(check.text("to")), check.in("value"));
          case "elementFromOxide" -> nutrient(check).elementFromOxide(check.in("value"));
          case "oxideFromElement" -> nutrient(check).oxideFromElement(check.in("value"));
          case "oxideLbPer1000Ft2FromElementGPerM2" ->
              Unit.GRAM_PER_M2.to(
                  Unit.POUND_PER_1000_FT2, nutrient(check).oxideFromElement(check.in("value")));
          case "layerMassKgPerM2" -> layer(check).massKgPerM2();
          case "layerGPerM2PerPpm" -> layer(check).gPerM2(1);
          case "layerKgPerHaPerPpm" ->
              Unit.GRAM_PER_M2.to(Unit.KILOGRAM_PER_HECTARE, layer(check).gPerM2(1));
          case "layerLbPerAcPerPpm" ->
              Unit.GRAM_PER_M2.to(Unit.POUND_PER_ACRE, layer(check).gPerM2(1));
          case "layerPpmPerGPerM2" -> layer(check).ppm(1);
          case "layerLbPerAc" ->
              Unit.GRAM_PER_M2.to(Unit.POUND_PER_ACRE, 1000 * layer(check).massKgPerM2());
          default -> throw check.unknownFunction();
        });
  }

  private static Unit unit(String symbol) {
    return Unit.named(symbol).orElseThrow();
  }

  private static LabelNutrient nutrient(PublishedCheck check) {
    return LabelNutrient.valueOf(check.text("nutrient"));
  }

  private static SoilLayer layer(PublishedCheck check) {
    return new SoilLayer(check.in("depthCm"), check.in("bulkDensityGPerCm3"));
  }
}
