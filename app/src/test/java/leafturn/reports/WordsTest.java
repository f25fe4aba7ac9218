package leafturn.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Map;
import leafturn.advice.call.Call;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.Spread;
import leafturn.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {
  private static final LocalDate FRIDAY = LocalDate.of(2015, 5, 29);

  @ParameterizedTest
  @CsvSource({
    "0.6734, 0.67 g",
    "0.0712, 0.071 g",
    "0.0034, 0.003 g",
    "0, 0 g",
    "7.449, 7.4 g",
    "17.5, 18 g",
    "454, 450 g",
    "-17.5, −17 g"
  })
  void aQuantityIsToldInTwoSignificantDigits(double value, String words) {
    assertThat(plain(QuantityWords.quantity(value, "g"))).isEqualTo(words);
  }

  @Test
  void aSpreadIsRoundedAlikeAtItsEndsAndMiddle() {
    SpreadWords words = QuantityWords.quantity(new Spread(8.74, 9.61, 11.2), "kg");
    assertThat(plain(words.middle())).isEqualTo("10 kg");
    assertThat(plain(words.range())).isEqualTo("9–11 kg");
    assertThat(plain(words.inLine())).isEqualTo("10 kg (9–11)");
  }

  @Test
  void aSpreadWhoseEndsRoundAlikeHasNoRange() {
    SpreadWords words = QuantityWords.percent(new Spread(0.281, 0.283, 0.284));
    assertThat(plain(words.inLine())).isEqualTo("28 %");
    assertThat(words.range()).isEmpty();
  }

  @Test
  void aChangeCarriesItsSignAndNothingHasNone() {
    SpreadWords words = QuantityWords.change(new Spread(-0.041, 0.001, 0.15), 0.01, "mm");
    assertThat(plain(words.inLine())).isEqualTo("0.00 mm (−0.04 to +0.15)");
  }

  @Test
  void aMassTurnsToKilogramsAtAThousandGrams() {
    assertThat(plain(QuantityWords.mass(914))).isEqualTo("910 g");
    assertThat(plain(QuantityWords.mass(1044))).isEqualTo("1.0 kg");
  }

  @Test
  void daysAreToldAsPeopleSayThem() {
    assertThat(DayWords.day(FRIDAY)).isEqualTo("Friday 29 May");
    assertThat(plain(DayWords.spreadOfDays(FRIDAY, new Spread(3, 5, 7)).inLine()))
        .isEqualTo("Wed 3 June (1–5 June)");
    assertThat(plain(DayWords.spreadOfDays(FRIDAY, new Spread(0.2, 1.6, 3.4)).inLine()))
        .isEqualTo("Sun 31 May (29 May–1 June)");
    assertThat(plain(DayWords.spreadOfDays(FRIDAY, Spread.exactly(1)).inLine()))
        .isEqualTo("Sat 30 May");
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 0, none, none",
    "0.3, 0.6, 0.99, unlikely, possible",
    "0.3, 0.6, 1.2, possible, possible",
    "0.9, 1.2, 1.8, likely, likely",
    "1.4, 1.6, 1.8, very likely, likely",
    "1.4, 2.1, 2.8, very likely, very likely"
  })
  void clumpRiskIsToldFromTheIndexAndTheRules(
      double low, double middle, double high, String usual, String changed) {
    Spread index = new Spread(low, middle, high);
    CallRules rules = CallRules.standard();
    CallRules others = rules.with(Map.of("clumps", 0.7, "clumps-heavy", 2.0));

    assertThat(OutcomeWords.clumping(index, Call.Limits.of(rules))).isEqualTo(usual);
    assertThat(OutcomeWords.clumping(index, Call.Limits.of(others))).isEqualTo(changed);
  }

  @Test
  void whatIsNotKnownIsSaid() {
    assertThat(OutcomeWords.bags(null).inLine()).isEqualTo("not known");
    assertThat(OutcomeWords.minutes(null).inLine()).isEqualTo("not known");
  }

  @Test
  void aBagBegunIsABagToEmpty() {
    assertThat(plain(OutcomeWords.bags(Spread.exactly(0)).inLine())).isEqualTo("no bags");
    assertThat(plain(OutcomeWords.bags(new Spread(0.2, 0.4, 0.6)).inLine())).isEqualTo("1 bag");
    assertThat(plain(OutcomeWords.bags(new Spread(0.9, 1, 2.2)).inLine())).isEqualTo("1 bag (1–3)");
    assertThat(plain(OutcomeWords.bags(Spread.exactly(3.4)).inLine())).isEqualTo("4 bags");
  }

  @Test
  void whatBecameOfTheClippingsIsNotRoundedToAllOrNothing() {
    assertThat(ClippingsFate.words(1, Units.METRIC)).isEqualTo("returned");
    assertThat(ClippingsFate.words(0, Units.METRIC)).isEqualTo("collected");
    assertThat(plain(ClippingsFate.words(0.5, Units.METRIC))).isEqualTo("50 % returned");
    assertThat(plain(ClippingsFate.words(0.5, Units.US))).isEqualTo("50 % of the clippings left");
    assertThat(ClippingsFate.words(0, Units.US)).isEqualTo("bagged");
  }

  private static String plain(String words) {
    return words.replace(QuantityWords.THIN, " ").replace('\u00a0', ' ');
  }
}
