package leafturn.advice.evidence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leafturn.advice.evidence.Treatment.Feed;
import leafturn.advice.evidence.Treatment.Mowing;
import leafturn.model.lawn.DayListener;
import leafturn.model.lawn.LawnRun;

/** What a soil test of 1 April shows of returned clippings after one and two seasons. */
final class SoilTests {
  private static final Feed FEED = new Feed(147, 10, 60, List.of(110, 150, 245, 280));
  private static final int YEARS = 3;

  private SoilTests() {}

  /** Readings of each 1 April. */
  private static final class Readings implements DayListener {
    private final List<Double> phosphorusPpm = new ArrayList<>();
    private final List<Double> potassiumPpm = new ArrayList<>();

    @Override
    public void dayDone(LawnRun run) {
      LocalDate today = run.terms().date(run.day());
      if (today.getMonthValue() == 4 && today.getDayOfMonth() == 1) {
        phosphorusPpm.add(run.soilPhosphorusPpm());
        potassiumPpm.add(run.soilPotassiumPpm());
      }
    }
  }

  static List<Measured> on(TrialGround ground) {
    Treatment collect = Treatment.collected(0).fed(FEED).mown(Mowing.ONE_THIRD);
    Readings collected = new Readings();
    Readings returned = new Readings();
    ground.run(Plot.TALL_FESCUE, collect, YEARS, collected);
    ground.run(Plot.TALL_FESCUE, collect.withReturn(), YEARS, returned);
    List<Measured> measured = new ArrayList<>();
    for (int seasons = 1; seasons <= 2; seasons++) {
      double collectedK = collected.potassiumPpm.get(seasons);
      double returnedK = returned.potassiumPpm.get(seasons);
      measured.add(
          Measured.of(
              "soil.p.%d".formatted(seasons),
              returned.phosphorusPpm.get(seasons) - collected.phosphorusPpm.get(seasons),
              ""));
      measured.add(
          Measured.of(
              "soil.k.%d".formatted(seasons),
              returnedK - collectedK,
              "collected %.0f, returned %.0f",
              collectedK,
              returnedK));
    }
    return measured;
  }
}
