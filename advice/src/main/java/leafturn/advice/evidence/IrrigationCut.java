package leafturn.advice.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import leafturn.model.Flows;
import leafturn.model.Parameters;
import leafturn.model.lawn.YearAccount;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;

/** What growth loses in a dry climate when irrigation falls from all to 60 % of the demand. */
final class IrrigationCut {
  private static final int YEARS = 4;

  private IrrigationCut() {}

  static List<Measured> on(WeatherSeries weather, Site site) {
    TrialGround dry = TrialGround.of(weather, site, 0.3);
    TrialGround arid = TrialGround.of(weather, site, 0.1);
    List<Measured> measured = new ArrayList<>();
    measured.addAll(on(dry, "irrigation.dry.147", 147));
    measured.addAll(on(dry, "irrigation.dry.300", 300));
    measured.addAll(on(arid, "irrigation.arid.300", 300));
    return measured;
  }

  private static List<Measured> on(TrialGround ground, String id, double rate) {
    Supply full = supply(ground, rate, 1);
    Supply cut = supply(ground, rate, 0.6);
    String met =
        "demand met %.2f -> %.2f, rain %.0f mm"
            .formatted(
                full.demandMet(), cut.demandMet(), full.course().mean(y -> y.water().rainMm()));
    return List.of(
        Measured.of(id, fall(full, cut, Course.DRY), "%s", met),
        Measured.of(id + ".production", fall(full, cut, Course.GROWTH), "%s", met));
  }

  private record Supply(Course course, double demandMet) {}

  private static Supply supply(TrialGround ground, double rate, double share) {
    double[] referenceMm = new double[1];
    Course course =
        ground.run(
            Plot.BLUEGRASS,
            Treatment.returned(rate).irrigated(share),
            YEARS,
            today -> referenceMm[0] += today.flow(Flows.REFERENCE_ET_MM));
    double demandMm = Parameters.of(Plot.BLUEGRASS.grass()).get("kc") * referenceMm[0];
    return new Supply(
        course, YEARS * course.mean(y -> y.water().evapotranspirationMm()) / demandMm);
  }

  private static double fall(Supply full, Supply cut, ToDoubleFunction<YearAccount> quantity) {
    return 100 * (1 - cut.course().mean(quantity) / full.course().mean(quantity));
  }
}
