package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import leafturn.advice.call.Place.AnnualBluegrass;
import leafturn.advice.call.Place.Deck;
import leafturn.advice.call.SeedHeads.Basis;
import leafturn.advice.call.SeedHeads.Figures;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.quantity.Units;
import org.junit.jupiter.api.Test;

class SeedHeadsTest {
  private static final LocalDate MAY = LocalDate.of(2014, 5, 12);
  private static final Figures STANDARD = Figures.of(CallRules.standard());
  private static final SiteClimate NEW_YORK =
      new SiteClimate(CallExamples.newYork(), Site.at(40.8, 40));

  @Test
  void theyAreLikelyInMayAndNotInMarchOrAugust() {
    assertThat(on(MAY, Circumstances.NONE).likelihood()).isGreaterThan(0.7);
    assertThat(on(LocalDate.of(2014, 3, 10), Circumstances.NONE).likelihood()).isLessThan(0.05);
    SeedHeads august = on(LocalDate.of(2014, 8, 1), Circumstances.NONE);
    assertThat(august.likelihood()).isZero();
    assertThat(august.basis()).isEqualTo(Basis.SPRING);
    assertThat(august.warmthCd()).isGreaterThan(2500);
  }

  @Test
  void aLookOutweighsTheWarmthForSomeDays() {
    Circumstances none = looked(MAY.minusDays(5), false);
    assertThat(on(MAY, none).likelihood()).isZero();
    assertThat(on(MAY, none).basis()).isEqualTo(Basis.NOT_SEEN);
    assertThat(on(MAY, none).lookedOn()).isEqualTo(MAY.minusDays(5));
    assertThat(on(MAY.plusDays(3), none).basis()).isEqualTo(Basis.SPRING);
    LocalDate august = LocalDate.of(2014, 8, 1);
    assertThat(on(august, looked(august.minusDays(14), true)).likelihood()).isEqualTo(1);
    assertThat(on(august, looked(august.minusDays(15), true)).likelihood()).isZero();
  }

  @Test
  void theDaysThatALookHoldsCanBeSet() {
    Figures figures = new Figures(1, 14, 20, 0.3);
    SeedHeads heads = SeedHeads.of(NEW_YORK, looked(MAY.minusDays(18), false), MAY, figures);
    assertThat(heads.basis()).isEqualTo(Basis.NOT_SEEN);
  }

  @Test
  void aLawnWithoutAnnualBluegrassHasNone() {
    Circumstances without =
        Circumstances.NONE.withPlace(
            new Place(Double.NaN, Deck.NOT_KNOWN, AnnualBluegrass.NONE, false));
    assertThat(on(MAY, without).likelihood()).isZero();
    assertThat(on(MAY, without).basis()).isEqualTo(Basis.NONE_GROWS);
  }

  @Test
  void aLaterStartOfTheYearMovesTheWindow() {
    SeedHeads later = SeedHeads.of(NEW_YORK, Circumstances.NONE, MAY, new Figures(60, 14, 7, 0.3));
    assertThat(later.warmthCd()).isLessThan(on(MAY, Circumstances.NONE).warmthCd());
  }

  @Test
  void aSmallFlushComesInCoolMaritimeAutumnsOnly() {
    LocalDate october = LocalDate.of(2014, 10, 15);
    SiteClimate coast = new SiteClimate(steady(11, 18), Site.at(51, 20));
    SeedHeads maritime = SeedHeads.of(coast, Circumstances.NONE, october, STANDARD);
    assertThat(maritime.likelyBy()).startsWith("calendar");
    assertThat(maritime.basis()).isEqualTo(Basis.AUTUMN);
    assertThat(maritime.likelihood()).isBetween(0.25, 0.3);
    assertThat(on(october, Circumstances.NONE).likelihood()).isZero();
  }

  @Test
  void aLikelihoodThatDecidesNothingIsToldAllTheSameAndALookOverrulesIt() {
    LocalDate october = LocalDate.of(2014, 10, 15);
    assertThat(notes(october, Circumstances.NONE))
        .anyMatch(
            note ->
                note.matches(
                    "Annual bluegrass, .* likelihood of (2[5-9]|30) % by the calendar, .* a look at the lawn overrules it\\."));
    assertThat(notes(october, looked(october.minusDays(2), false)))
        .anyMatch(note -> note.contains("none was seen on 13 October, and that counts for more"));
    assertThat(notes(LocalDate.of(2014, 7, 20), Circumstances.NONE))
        .noneMatch(note -> note.contains("in seed with a likelihood"));
  }

  private static List<String> notes(LocalDate on, Circumstances circumstances) {
    SiteClimate coast = new SiteClimate(steady(11, 18), Site.at(51, 20));
    return MowingCall.of(
            CallExamples.fescue(),
            coast,
            List.of(),
            new Asked(on, CallRules.standard(), Units.METRIC, circumstances, SeasonsAsked.USUAL))
        .notes();
  }

  @Test
  void aRecordThatBeginsTooLateCannotTell() {
    SiteClimate late = new SiteClimate(steady(5, 15), Site.at(51, 20));
    SeedHeads heads = SeedHeads.of(late, Circumstances.NONE, LocalDate.of(2013, 5, 1), STANDARD);
    assertThat(heads.basis()).isEqualTo(Basis.NOT_KNOWN);
    assertThat(heads.likelihood()).isNaN();
  }

  private static SeedHeads on(LocalDate on, Circumstances circumstances) {
    return SeedHeads.of(NEW_YORK, circumstances, on, STANDARD);
  }

  private static Circumstances looked(LocalDate day, boolean there) {
    Sight heads = Sight.ANNUAL_BLUEGRASS_SEED_HEADS;
    return Circumstances.NONE.withSightings(
        List.of(there ? Sighting.of(heads, day) : Sighting.none(heads, day)));
  }

  /** The same day from March 2013 to the end of 2014. */
  private static WeatherSeries steady(double minimumC, double maximumC) {
    Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
    values.put(Quantity.MINIMUM_C, days(minimumC));
    values.put(Quantity.MAXIMUM_C, days(maximumC));
    values.put(Quantity.RAIN_MM, days(1));
    return new WeatherSeries(LocalDate.of(2013, 3, 1), values);
  }

  private static double[] days(double value) {
    double[] days = new double[671];
    Arrays.fill(days, value);
    return days;
  }
}
