package leafturn.model.water;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import leafturn.quantity.PublishedCheck;
import leafturn.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CurveNumberRunoffPublishedTest {
  static List<PublishedCheck> checks() {
    return PublishedCheck.of(CurveNumberRunoffPublishedTest.class, "runoff.csv");
  }

  @ParameterizedTest
  @MethodSource("checks")
  void agreesWithItsSource(PublishedCheck check) {
    double curveNumber = check.in("curveNumber");
    check.agreesWith(
        switch (check.function()) {
          case "runoffMm" -> runoffMm(curveNumber, check.in("rainMm"));
          case "runoffInch" ->
              Unit.MILLIMETRE.to(
                  Unit.INCH,
                  runoffMm(curveNumber, Unit.INCH.to(Unit.MILLIMETRE, check.in("rainInch"))));
          case "dryCurveNumber" -> CurveNumberRunoff.dryCurveNumber(curveNumber);
          case "wetCurveNumber" -> CurveNumberRunoff.wetCurveNumber(curveNumber);
          default -> throw check.unknownFunction();
        });
  }

  @Test
  void runoffGrowsWithRainAndNeverExceedsIt() {
    for (double curveNumber = 1; curveNumber <= 100; curveNumber++) {
      double before = 0;
      for (double rainMm = 0; rainMm <= 400; rainMm += 2.5) {
        double runoffMm = runoffMm(curveNumber, rainMm);
        assertThat(runoffMm).isBetween(before, rainMm);
        before = runoffMm;
      }
    }
  }

  private static double runoffMm(double curveNumber, double rainMm) {
    return CurveNumberRunoff.runoffMm(rainMm, CurveNumberRunoff.retentionMm(curveNumber));
  }
}
