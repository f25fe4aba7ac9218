package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import leafturn.quantity.Units;
import org.junit.jupiter.api.Test;

/** What a phone says of the fields of the log without asking the book. */
class PhoneChecksTest {
  @Test
  void whatCannotBeLeftEmptyIsToldAsTheBookTellsIt() {
    assertThat(checks("watered", Units.METRIC).missing())
        .contains("\"day\":\"It is missing; give a date such as")
        .contains("\"waterMm\":\"It is missing; give a number from 0 to 200, mm.\"");
    assertThat(checks("treated", Units.METRIC).missing())
        .contains("\"product\":\"It is missing;")
        .as("needed only where the label says something")
        .doesNotContain("clippingsIntervalDays");
    assertThat(checks("returned", Units.METRIC).missing()).doesNotContain("heightAfterMm");
  }

  @Test
  void numbersThatAreNoneAreToldInTheUnitsOfTheirWriter() {
    assertThat(checks("watered", Units.METRIC).noNumber())
        .isEqualTo("{\"waterMm\":\"\\\"?\\\" is not a number; give a number from 0 to 200, mm.\"}");
    assertThat(checks("watered", Units.US).noNumber())
        .contains("\\\"?\\\" is not a number; give a number from 0 to 7.87", "in.");
    assertThat(checks("returned", Units.METRIC).noNumber())
        .contains("\"heightBeforeMm\"", "\"heightAfterMm\"", "\"minutes\"");
  }

  private static PhoneChecks checks(String key, Units units) {
    return PhoneChecks.of(LogChoice.named(key, units).orElseThrow(), units);
  }
}
