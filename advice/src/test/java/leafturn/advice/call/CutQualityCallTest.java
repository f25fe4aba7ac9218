package leafturn.advice.call;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leafturn.advice.call.CutKind.NitrogenAtFirst;
import leafturn.advice.call.Option.Outcome;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LogEntry;
import leafturn.model.lawn.SiteClimate;
import leafturn.quantity.Units;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a call says of its clippings: their kind, how long they last and what they leave. */
class CutQualityCallTest {
  private static final LocalDate ON = LocalDate.of(2014, 6, 5);
  private static final Lawn FESCUE = CallExamples.fescue();
  private static final SiteClimate NEW_YORK =
      new SiteClimate(CallExamples.newYork(), FESCUE.site());

  @Test
  void youngCutsAreRicherAndShorterLivedThanThoseAfterTwoWeeksAway() {
    Outcome often = returnedNow(call(FESCUE, mown(ON, 4, 8, 12, 16, 20), Circumstances.NONE));
    Outcome away = returnedNow(call(FESCUE, mown(ON, 14, 18, 22), Circumstances.NONE));

    assertThat(middle(often.kind().carbonPerNitrogen()))
        .isLessThan(middle(away.kind().carbonPerNitrogen()));
    assertThat(middle(often.kind().ligninFraction()))
        .isLessThan(middle(away.kind().ligninFraction()));
    assertThat(middle(often.daysToHalf())).isLessThan(middle(away.daysToHalf()));
    assertThat(middle(often.daysToNineTenths())).isLessThan(middle(away.daysToNineTenths()) - 15);
    assertThat(inSight(often).days().high()).isLessThan(inSight(away).days().middle());
    assertThat(inSight(often).days().high()).as("weeks, a month at most").isLessThan(31);
  }

  @Test
  void betweenTheCriticalRatiosItMayGoEitherWay() {
    CallRules rules = CallRules.standard();
    assertThat(NitrogenAtFirst.of(15.4, rules)).isEqualTo(NitrogenAtFirst.FREED);
    assertThat(NitrogenAtFirst.of(15.6, rules))
        .as("shown as 16")
        .isEqualTo(NitrogenAtFirst.EITHER_WAY);
    assertThat(NitrogenAtFirst.of(16, rules)).isEqualTo(NitrogenAtFirst.EITHER_WAY);
    assertThat(NitrogenAtFirst.of(25, rules)).isEqualTo(NitrogenAtFirst.EITHER_WAY);
    assertThat(NitrogenAtFirst.of(25.4, rules))
        .as("shown as 25")
        .isEqualTo(NitrogenAtFirst.EITHER_WAY);
    assertThat(NitrogenAtFirst.of(25.6, rules)).isEqualTo(NitrogenAtFirst.TIED_UP);

    Outcome outcome = returnedNow(call(FESCUE, mown(ON, 5, 10), Circumstances.NONE));
    assertThat(outcome.kind().nitrogenAtFirst())
        .isEqualTo(NitrogenAtFirst.of(middle(outcome.kind().carbonPerNitrogen()), rules));
  }

  @Test
  void aLawnMayKeepToOneKindOfClippings() {
    Lawn oneKind =
        new Lawn(
            FESCUE.site(),
            FESCUE.ground(),
            FESCUE.programme(),
            FESCUE.spinUpYears(),
            Map.of("qual", 0.0));
    CutKind kind = returnedNow(call(oneKind, mown(ON, 5, 10), Circumstances.NONE)).kind();

    assertThat(kind.ligninFraction()).isNull();
    assertThat(kind.leafAgeDays()).isNull();
    assertThat(kind.carbonPerNitrogen()).isNotNull();
  }

  @Test
  void clippingsStillSeenMakeThisLawnSlowerThanOthers() {
    List<LogEntry> log = mown(ON, 6, 20, 34, 48);
    Circumstances seen =
        Circumstances.NONE.withSightings(
            List.of(
                Sighting.of(Sight.CLIPPINGS_STILL_SEEN, ON.minusDays(36)),
                Sighting.of(Sight.CLIPPINGS_STILL_SEEN, ON.minusDays(21)),
                Sighting.of(Sight.CLIPPINGS_STILL_SEEN, ON.plusDays(3))));
    InSightFor usual = inSight(returnedNow(call(FESCUE, log, Circumstances.NONE)));
    InSightFor own = inSight(returnedNow(call(FESCUE, log, seen)));

    assertThat(usual.own()).isEqualTo(OwnSight.UNKNOWN);
    assertThat(own.own().looks()).as("none of them in the future").isEqualTo(2);
    assertThat(own.own().times()).isGreaterThan(1);
    assertThat(own.days().middle()).isGreaterThanOrEqualTo(usual.days().middle());
  }

  @Test
  void seedStalksThatSomeoneSawMakeClippingsLastLonger() {
    List<LogEntry> log = mown(ON, 5, 10);
    Outcome seen =
        returnedNow(
            call(
                FESCUE,
                log,
                Circumstances.NONE.withSightings(
                    List.of(Sighting.of(Sight.OWN_STALKS, ON.minusDays(1))))));
    Outcome missed =
        returnedNow(
            call(
                FESCUE,
                log,
                Circumstances.NONE.withSightings(
                    List.of(Sighting.none(Sight.OWN_STALKS, ON.minusDays(1))))));

    assertThat(middle(seen.kind().ligninFraction()))
        .isGreaterThan(middle(missed.kind().ligninFraction()));
    assertThat(middle(seen.kind().carbonPerNitrogen()))
        .isGreaterThan(middle(missed.kind().carbonPerNitrogen()));
    assertThat(middle(seen.daysToNineTenths())).isGreaterThan(middle(missed.daysToNineTenths()));
  }

  @Test
  void cutsThatStillLieOnTheTurfAreToldApart() {
    List<LyingCut> lying =
        call(FESCUE, mown(ON, 6, 13, 20, 27, 34, 41, 48, 55, 400), Circumstances.NONE)
            .particulars()
            .lying();
    LyingCut last = lying.get(0);
    LyingCut monthOld = lying.get(4);

    assertThat(last.day()).isEqualTo(ON.minusDays(6));
    assertThat(monthOld.day()).isEqualTo(ON.minusDays(34));
    assertThat(last.leftFraction()).isBetween(0.7, 0.95);
    assertThat(monthOld.leftFraction()).isLessThan(last.leftFraction() - 0.2);
    assertThat(monthOld.stillSeen()).isFalse();
    assertThat(last.carbonPerNitrogen()).isBetween(8.0, 20.0);
    assertThat(last.nitrogenAtFirst())
        .isEqualTo(NitrogenAtFirst.of(last.carbonPerNitrogen(), CallRules.standard()));
    assertThat(lying).noneMatch(cut -> cut.day().equals(ON.minusDays(400)));
  }

  @Test
  void aYearOfReturningLeavesALittleMoreThatchThanAYearOfCollecting() {
    Call call = call(FESCUE, mown(ON, 5, 10), Circumstances.NONE);
    ThatchInAYear returned = requireNonNull(returnedNow(call).thatchInAYear());
    ThatchInAYear collected = requireNonNull(outcome(call, Choice.MOW_AND_COLLECT).thatchInAYear());

    assertThat(returned.years()).as("the record's other years").isEqualTo(3);
    assertThat(returned.mm().middle()).isGreaterThan(collected.mm().middle());
    assertThat(returned.mm().middle() - collected.mm().middle()).isLessThan(1);
    assertThat(collected.mm().middle()).isBetween(1.0, 15.0);
  }

  @Test
  void sharesOfTheYearsFeedAreOfWhatIsFed() {
    Outcome outcome = returnedNow(call(FESCUE, mown(ON, 5, 10), Circumstances.NONE));

    assertThat(middle(outcome.nitrogenShareOfYearsFeed()))
        .isEqualTo(outcome.nitrogenG().middle() / 9.8, within(1e-12));
    assertThat(outcome.phosphorusShareOfYearsFeed()).as("no phosphorus is fed").isNull();
    assertThat(outcome.potassiumShareOfYearsFeed()).isNull();
  }

  private static double middle(@Nullable Spread spread) {
    return requireNonNull(spread).middle();
  }

  private static InSightFor inSight(Outcome outcome) {
    return requireNonNull(outcome.inSight());
  }

  private static Outcome returnedNow(Call call) {
    return outcome(call, Choice.MOW_AND_RETURN);
  }

  private static Outcome outcome(Call call, Choice choice) {
    return call.options().stream()
        .filter(option -> option.choice() == choice && option.day().equals(ON))
        .findFirst()
        .orElseThrow()
        .outcome();
  }

  private static Call call(Lawn lawn, List<LogEntry> log, Circumstances known) {
    return MowingCall.of(
        lawn, NEW_YORK, log, new Asked(ON, CallRules.standard(), Units.METRIC, known));
  }

  /** Mown to the usual height so many days before a day. */
  private static List<LogEntry> mown(LocalDate day, int... daysBefore) {
    List<LogEntry> log = new ArrayList<>();
    for (int days : daysBefore) {
      log.add(new LogEntry.Mown(day.minusDays(days), Double.NaN, Double.NaN, 1));
    }
    return log;
  }
}
