package leafturn.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people read. No source: our own reading of ISO 80000-1. */
class DisplayNumberTest {
  @ParameterizedTest
  @CsvSource({
    "1.997, 3, 2.00",
    "0.004567, 2, 0.0046",
    "12345, 3, 12\u202f300",
    "1234, 3, 1230",
    "9.996, 3, 10.0",
    "-0.25, 1, −0.3",
    "-3.14159, 3, −3.14",
    "0, 4, 0",
    "1234567.8, 8, 1\u202f234\u202f567.8",
    "2.5, 1, 3"
  })
  void keepsSignificantDigits(double value, int digits, String text) {
    assertThat(DisplayNumber.significant(value, digits)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"1.005, 2, 1.01", "1234.5, 0, 1235", "-0.04, 1, 0.0", "12345.678, 1, 12\u202f345.7"})
  void keepsDecimals(double value, int decimals, String text) {
    assertThat(DisplayNumber.decimals(value, decimals)).isEqualTo(text);
  }

  @Test
  void aCountHasItsWord() {
    assertThat(DisplayNumber.counted(1, "core")).isEqualTo("1 core");
    assertThat(DisplayNumber.counted(0, "core")).isEqualTo("0 cores");
    assertThat(DisplayNumber.counted(1200, "core")).isEqualTo("1,200 cores");
  }

  @Test
  void writesADashWhereThereIsNoNumber() {
    assertThat(DisplayNumber.significant(Double.NaN, 3)).isEqualTo("–");
    assertThat(DisplayNumber.withUnit(Double.NaN, 3, "mm")).isEqualTo("–");
    assertThat(DisplayNumber.decimals(Double.POSITIVE_INFINITY, 1)).isEqualTo("unbounded");
    assertThat(DisplayNumber.decimals(Double.NEGATIVE_INFINITY, 1)).isEqualTo("unbounded below");
  }

  @Test
  void writesAPowerOfTenWhereZerosWouldHaveToBeCounted() {
    assertThat(DisplayNumber.significant(1e30, 3)).isEqualTo("1.00 × 10^30");
    assertThat(DisplayNumber.significant(-2.346e-20, 2)).isEqualTo("\u22122.3 × 10^-20");
    assertThat(DisplayNumber.significant(9.99e14, 2)).isEqualTo("1.0 × 10^15");
    assertThat(DisplayNumber.significant(1e-6, 1)).isEqualTo("0.000001");
  }

  @Test
  void keepsNumberAndUnitOnOneLine() {
    assertThat(DisplayNumber.withUnit(1.26, 2, "mm")).isEqualTo("1.3\u00a0mm");
    assertThat(DisplayNumber.withUnit(0.5, 2, "")).isEqualTo("0.50");
  }

  @Test
  void readsTheSameWhateverTheLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertThat(DisplayNumber.decimals(1234.5, 1)).isEqualTo("1234.5");
      assertThat(DisplayNumber.plain(1e-7)).isEqualTo("0.0000001");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void refusesACountOfDigitsItCannotKeep() {
    assertThatThrownBy(() -> DisplayNumber.significant(1, 0)).hasMessageContaining("from 1 to 15");
    assertThatThrownBy(() -> DisplayNumber.decimals(1, 16)).hasMessageContaining("from 0 to 15");
  }
}
