package leafturn.model.weather;

import java.util.List;
import leafturn.quantity.PublishedCheck;
import leafturn.quantity.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DegreeDaysPublishedTest {
  static List<PublishedCheck> checks() {
    return PublishedCheck.of(DegreeDaysPublishedTest.class, "degree-days.csv");
  }

  @ParameterizedTest
  @MethodSource("checks")
  void agreesWithItsSource(PublishedCheck check) {
    check.agreesWith(
        switch (check.function()) {
          case "averageCd" -> celsius(check, DegreeDays::averageCd);
          case "triangleCd" -> celsius(check, DegreeDays::triangleCd);
          case "sineCd" -> celsius(check, DegreeDays::sineCd);
          case "averageFd" -> fahrenheit(check, DegreeDays::averageCd);
          case "triangleFd" -> fahrenheit(check, DegreeDays::triangleCd);
          case "sineFd" -> fahrenheit(check, DegreeDays::sineCd);
          default -> throw check.unknownFunction();
        });
  }

  private interface CutOff {
    double degreeDaysCd(double minimumC, double maximumC, double lowerC, double upperC);
  }

  private interface Open {
    double degreeDaysCd(double minimumC, double maximumC, double lowerC);
  }

  private static double celsius(PublishedCheck check, CutOff method) {
    return method.degreeDaysCd(
        check.in("minimumC"), check.in("maximumC"), check.in("lowerC"), check.in("upperC"));
  }

  private static double fahrenheit(PublishedCheck check, Open method) {
    double degreeDaysCd =
        method.degreeDaysCd(
            Unit.FAHRENHEIT.to(Unit.CELSIUS, check.in("minimumF")),
            Unit.FAHRENHEIT.to(Unit.CELSIUS, check.in("maximumF")),
            Unit.FAHRENHEIT.to(Unit.CELSIUS, check.in("lowerF")));
    return Unit.CELSIUS_DIFFERENCE.to(Unit.FAHRENHEIT_DIFFERENCE, degreeDaysCd);
  }
}
