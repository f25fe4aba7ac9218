package leafturn.reports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ReportsTest {
  private record Result(
      LocalDate day, double known, double unknown, @Nullable Double none, List<Integer> list) {}

  @Test
  void writesRecordsInOrderDatesAsIsoAndUnknownNumbersAsNull() {
    Result result = new Result(LocalDate.of(2015, 5, 28), 1.5, Double.NaN, null, List.of(1, 2));
    assertThat(JsonReport.of(result))
        .isEqualTo(
            """
            {
              "day" : "2015-05-28",
              "known" : 1.5,
              "unknown" : null,
              "none" : null,
              "list" : [
                1,
                2
              ]
            }""");
  }

  @Test
  void alignsColumns() {
    assertThat(new TextTable("Year", "rain").row("2012", "1012.5").row("9", "7").lines())
        .containsExactly("Year    rain", "2012  1012.5", "9          7");
  }

  @Test
  void refusesARowOfAnotherLength() {
    assertThat(new TextTable("", "A", "B", "C").row("rain", "10", "200", "3").lines(13))
        .containsExactly("       A    B", "rain  10  200", "", "      C", "rain  3");
    assertThatThrownBy(() -> new TextTable("a", "b").row("1"))
        .hasMessageContaining("1 cells, the header 2");
  }
}
