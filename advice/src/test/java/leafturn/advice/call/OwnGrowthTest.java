package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leafturn.model.grass.Species;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LogEntry;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

/** Logged heights teach a lawn's own growth. */
class OwnGrowthTest {
  private static final WeatherSeries WEATHER = CallExamples.newYork();
  private static final LocalDate ON = LocalDate.of(2014, 6, 30);
  private static final int EVERY_DAYS = 8;

  /** A log as a lawn on soil with other organic matter than described would fill it. */
  private static List<LogEntry> logOf(double organicMatterFraction) {
    return logOf(grownOn(organicMatterFraction));
  }

  private static Lawn grownOn(double organicMatterFraction) {
    Lawn described = CallExamples.lawn(EVERY_DAYS);
    return new Lawn(
        described.site(),
        described.ground(),
        described.programme(),
        described.spinUpYears(),
        Map.of("om", organicMatterFraction));
  }

  private static List<LogEntry> logOf(Lawn grown) {
    List<LogEntry> log = new ArrayList<>();
    log.add(new LogEntry.Mown(LocalDate.of(2014, 4, 10), Double.NaN, 76, 1));
    SiteClimate climate = new SiteClimate(WEATHER, grown.site());
    for (LocalDate day = LocalDate.of(2014, 4, 18);
        day.isBefore(ON);
        day = day.plusDays(EVERY_DAYS)) {
      double heightMm = Replay.to(grown, climate, log, day).heightMm();
      log.add(new LogEntry.Mown(day, heightMm, 76, 1));
    }
    return log;
  }

  private static OwnGrowth learned(List<LogEntry> log) {
    return MowingCall.of(CallExamples.lawn(EVERY_DAYS), WEATHER, log, ON).outlook().growth();
  }

  @Test
  void aFasterLawnIsLearnedAndShrunkTowardsItsDescription() {
    OwnGrowth learned = learned(logOf(0.09));
    assertThat(learned.measured()).isGreaterThan(5);
    assertThat(learned.factor().middle()).isBetween(1.1, 1.6);
    assertThat(learned.past()).hasSizeBetween(5, 8).allMatch(OwnGrowth.PastHeight::within);
    OwnGrowth slow = learned(logOf(0.02));
    assertThat(slow.factor().middle()).isBetween(0.6, 0.95);
  }

  @Test
  void aLawnThatGrowsAsDescribedKeepsItsDescription() {
    OwnGrowth learned = learned(logOf(0.05));
    assertThat(learned.factor().middle()).isBetween(0.97, 1.03);
    assertThat(learned.factor().high() - learned.factor().low()).isLessThan(0.4);
  }

  @Test
  void whatWasLearnedBringsTodaysHeightNearerTheTruth() {
    Lawn rich = grownOn(0.09);
    List<LogEntry> log = logOf(rich);
    LocalDate later = ON.plusDays(4);
    SiteClimate climate = new SiteClimate(WEATHER, rich.site());
    double trueMm = Replay.to(rich, climate, log, later).heightMm();
    LawnToday learned = Replay.to(CallExamples.lawn(EVERY_DAYS), climate, log, later);
    double growth = learned.growth().middle();
    double unlearnedMm = 76 + (learned.heightMm() - 76) / growth;
    assertThat(Math.abs(learned.heightMm() - trueMm)).isLessThan(Math.abs(unlearnedMm - trueMm));
  }

  @Test
  void withoutHeightsNothingIsLearned() {
    List<LogEntry> log = List.of(new LogEntry.Mown(ON.minusDays(9), Double.NaN, 76, 1));
    assertThat(learned(log)).isEqualTo(OwnGrowth.UNMEASURED);
  }

  @Test
  void aHeightMeasuredTodayTeachesToo() {
    LogEntry cut = new LogEntry.Mown(ON.minusDays(9), Double.NaN, 76, 1);
    double modelMm =
        Replay.to(
                CallExamples.lawn(EVERY_DAYS),
                new SiteClimate(WEATHER, CallExamples.fescue().site()),
                List.of(cut),
                ON)
            .heightMm();
    OwnGrowth slow = learned(List.of(cut, new LogEntry.Measured(ON, 76 + (modelMm - 76) / 2)));
    assertThat(slow.measured()).isEqualTo(1);
    assertThat(slow.factor().middle()).isBetween(0.7, 0.9);
    assertThat(slow.past().get(0).day()).isEqualTo(ON);
  }

  @Test
  void aHeightBeforeAMowingIsGrowthOfLate() {
    List<LogEntry> log =
        List.of(
            new LogEntry.Mown(ON.minusDays(7), 93, 64, 1),
            new LogEntry.Mown(ON.minusDays(14), Double.NaN, 64, 1));
    assertThat(MeasuredGrowth.mmPerDay(log, ON, 64)).isEqualTo(29.0 / 7);
    assertThat(MeasuredGrowth.mmPerDay(log, ON.plusDays(1), 64)).isNaN();
    List<LogEntry> longAgo =
        List.of(
            new LogEntry.Mown(ON.minusDays(40), Double.NaN, 64, 1),
            new LogEntry.Mown(ON.minusDays(3), 93, 64, 1));
    assertThat(MeasuredGrowth.mmPerDay(longAgo, ON, 64)).isNaN();
  }

  @Test
  void grassThatARulerFoundGrowingIsNotSaidToBeAtRest() {
    Situation drought =
        Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 7, 18)
            .dry(40, 6, 22, 33)
            .logged(new LogEntry.Mown(LocalDate.of(2015, 7, 4), Double.NaN, 64, 1));
    assertThat(drought.call().sentence()).contains("likely at rest");
    drought.logged(new LogEntry.Mown(LocalDate.of(2015, 7, 11), 93, 64, 1));
    assertThat(Situation.all(drought.call())).doesNotContain("at rest");
  }
}
