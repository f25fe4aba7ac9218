package leafturn.model.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leafturn.model.Flows;
import leafturn.model.Parameters;
import leafturn.model.Stores;
import leafturn.model.grass.Species;
import leafturn.quantity.PublishedCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Nine days of a loam root zone of 0.30 m without irrigation; no day's rain runs off. */
class RootZonePublishedTest {
  private static final double[] REFERENCE_ET_MM = {5, 5, 5, 5, 5, 5, 4, 5, 5};
  private static final double[] RAIN_MM = {0, 0, 0, 0, 0, 0, 20, 0, 0};

  private static final Map<String, Double> LOAM =
      Map.of("fc", 0.25, "wp", 0.12, "zr", 0.30, "ptab", 0.40, "kc", 0.95, "cn", 61.0, "irr", 0.0);

  /** What the run has come to after a day: last state and flows, and sums since the start. */
  private record Run(double[] stores, double[] flows, double evapotranspirationMm, double drainMm) {
    static Run through(int days) {
      RootZone zone = zone(Map.of());
      double[] stores = new double[Stores.COUNT];
      double[] flows = new double[Flows.COUNT];
      double evapotranspirationMm = 0;
      double drainMm = 0;
      for (int day = 0; day < days; day++) {
        zone.step(stores, flows, RAIN_MM[day], 0, REFERENCE_ET_MM[day]);
        evapotranspirationMm += flows[Flows.EVAPOTRANSPIRATION_MM];
        drainMm += flows[Flows.DRAINAGE_MM];
      }
      return new Run(stores, flows, evapotranspirationMm, drainMm);
    }
  }

  static List<PublishedCheck> checks() {
    return PublishedCheck.of(RootZonePublishedTest.class, "root-zone-water.csv");
  }

  @ParameterizedTest
  @MethodSource("checks")
  void agreesWithItsSource(PublishedCheck check) {
    check.agreesWith(
        switch (check.function()) {
          case "depletionMm" -> Run.through(check.wholeIn("day")).stores()[Stores.DEPLETION_MM];
          case "waterStressFraction" ->
              Run.through(check.wholeIn("day")).flows()[Flows.WATER_STRESS];
          case "evapotranspirationSumMm" ->
              Run.through(check.wholeIn("day")).evapotranspirationMm();
          case "availableMm" ->
              zone(Map.of(
                      "fc", check.in("fieldCapacity"),
                      "wp", check.in("wiltingPoint"),
                      "zr", check.in("rootZoneM")))
                  .availableMm();
          default -> throw check.unknownFunction();
        });
  }

  @Test
  void waterThatCameInIsStoredUsedOrDrained() {
    Run run = Run.through(9);
    assertThat(20 - run.evapotranspirationMm() - run.drainMm())
        .isCloseTo(-run.stores()[Stores.DEPLETION_MM], within(1e-12));
  }

  private static RootZone zone(Map<String, Double> changes) {
    Map<String, Double> values = new HashMap<>(LOAM);
    values.putAll(changes);
    return new RootZone(Parameters.of(Species.TALL_FESCUE).with(values));
  }
}
