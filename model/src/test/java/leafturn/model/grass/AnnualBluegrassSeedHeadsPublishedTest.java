package leafturn.model.grass;

import java.util.List;
import leafturn.model.Bisection;
import leafturn.quantity.PublishedCheck;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class AnnualBluegrassSeedHeadsPublishedTest {
  static List<PublishedCheck> checks() {
    return PublishedCheck.of(AnnualBluegrassSeedHeadsPublishedTest.class, "seed-heads.csv");
  }

  @ParameterizedTest
  @MethodSource("checks")
  void agreesWithItsSource(PublishedCheck check) {
    double peakRate = AnnualBluegrassSeedHeads.floweringRate(AnnualBluegrassSeedHeads.peakCd());
    check.agreesWith(
        switch (check.function()) {
          case "onsetCd" -> AnnualBluegrassSeedHeads.onsetCd();
          case "peakCd" -> AnnualBluegrassSeedHeads.peakCd();
          case "endCd" -> AnnualBluegrassSeedHeads.endCd();
          case "floweringRateAtPeak" -> peakRate;
          case "floweringRate" -> AnnualBluegrassSeedHeads.floweringRate(check.in("degreeDaysCd"));
          case "halfPeakReachedAtCd" ->
              Bisection.zero(
                  warmth -> AnnualBluegrassSeedHeads.floweringRate(warmth) - peakRate / 2,
                  check.in("searchFromCd"),
                  check.in("searchToCd"));
          case "degreeDaysCd" -> AnnualBluegrassSeedHeads.degreeDaysCd(check.in("meanC"));
          default -> throw check.unknownFunction();
        });
  }
}
