package leafturn.model.lawn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import leafturn.model.Flows;
import leafturn.model.Parameters;
import leafturn.model.Stores;
import leafturn.model.grass.Species;
import leafturn.model.weather.Site;
import org.junit.jupiter.api.Test;

/** Labels of nitrogen add up to the stores they are in, whatever is done to the lawn. */
class NitrogenTracerTest {
  private static final int TWENTY_YEARS = 7305;

  private final LawnEquations equations =
      new LawnEquations(Parameters.of(Species.TALL_FESCUE).with(Map.of("irr", 0.8)));
  private final LawnState start = LawnModel.startState(equations, 76);
  private final NitrogenTracer tracer = new NitrogenTracer(start);

  private LawnRun live(double returned, int days, DayListener listener) {
    DailyTerms terms =
        DailyTerms.asRecorded(
            new SiteClimate(
                RandomWeather.mild(1, LocalDate.of(2001, 1, 1), days), Site.at(40.78, 40)),
            0,
            days,
            Double.NaN);
    LawnRun run = new LawnRun(equations, start, terms);
    run.live(0, days, new ProgrammeKeeper(programme(returned), equations), listener);
    return run;
  }

  private static Programme programme(double returned) {
    return new Programme(
        new Programme.Mowing(76, 7, CalendarDay.ofYear(75), CalendarDay.ofYear(345), returned),
        List.of(
            new Programme.Feeding(CalendarDay.ofYear(110), 4, 6, 1, 4),
            new Programme.Feeding(CalendarDay.ofYear(245), 2, 4, 0, 4)),
        0.8);
  }

  private double all(int store) {
    double sum = 0;
    for (NitrogenLabel label : NitrogenLabel.values()) {
      sum += tracer.held(store, label);
    }
    return sum;
  }

  @Test
  void labelsAddUpToTheStoresThroughTwentyYears() {
    double[] worst = new double[1];
    live(
        1,
        TWENTY_YEARS,
        run -> {
          tracer.dayDone(run);
          for (int store = Stores.NITROGEN; store < Stores.PHOSPHORUS; store++) {
            double scale = Math.max(1, run.store(store));
            worst[0] = Math.max(worst[0], Math.abs(all(store) - run.store(store)) / scale);
          }
        });

    assertThat(worst[0]).isLessThan(2e-12);
  }

  @Test
  void everyLabelIsAccountedFor() {
    LawnRun run = live(1, TWENTY_YEARS, tracer);

    double uptake = 0;
    double leached = 0;
    for (NitrogenLabel label : NitrogenLabel.values()) {
      uptake += tracer.uptake(label);
      leached += tracer.leached(label);
    }
    assertThat(uptake).isCloseTo(run.total(Flows.UPTAKE_N), within(1e-9));
    assertThat(leached).isCloseTo(run.total(Flows.LEACHED_N), within(1e-9));
    assertThat(tracer.uptake(NitrogenLabel.CLIPPINGS)).isGreaterThan(0.2 * uptake);
  }

  @Test
  void clippingsOnTheTurfAreClippingsAlone() {
    live(
        1,
        365,
        run -> {
          tracer.dayDone(run);
          for (int store : new int[] {Stores.METABOLIC_N, Stores.STRUCTURAL_N}) {
            assertThat(tracer.held(store, NitrogenLabel.SOIL)).isZero();
            assertThat(tracer.held(store, NitrogenLabel.FERTILISER)).isZero();
          }
        });

    assertThat(all(Stores.METABOLIC_N)).isPositive();
  }

  @Test
  void fertiliserCountedAsSoilLeavesNoneLabelled() {
    live(0, 365, tracer);
    double before = all(Stores.HUMUS_N);

    tracer.countAsSoil(NitrogenLabel.FERTILISER);

    for (int store = Stores.NITROGEN; store < Stores.PHOSPHORUS; store++) {
      assertThat(tracer.held(store, NitrogenLabel.FERTILISER)).isZero();
    }
    assertThat(all(Stores.HUMUS_N)).isCloseTo(before, within(1e-12 * before));
  }

  @Test
  void aMeasuredHeightCountsAsTheSoils() {
    DailyTerms terms =
        DailyTerms.asRecorded(
            new SiteClimate(RandomWeather.mild(2, LocalDate.of(2001, 5, 1), 3), Site.at(40.78, 40)),
            0,
            3,
            Double.NaN);
    LawnRun run = new LawnRun(equations, start, terms);
    run.live(
        0,
        3,
        new Keeper() {
          @Override
          public void morning(LawnRun lawn) {}

          @Override
          public void evening(LawnRun lawn) {
            lawn.correctHeight(lawn.day() == 1 ? 80 : 120);
          }
        },
        tracer);

    assertThat(all(Stores.PLANT_N)).isCloseTo(run.store(Stores.PLANT_N), within(1e-12));
    assertThat(run.total(Flows.CORRECTION_N)).isPositive();
  }
}
