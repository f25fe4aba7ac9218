package leafturn.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import leafturn.advice.call.Call;
import leafturn.advice.call.Spread;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What is said of a third agrees with the height it is said of, and with the last safe day. */
class MowByTest {
  private static final Spread TODAY = Spread.exactly(0.2);

  private static Call call(
      double heightMm, double cutMm, @Nullable Spread mowBy, @Nullable LocalDate lastSafe) {
    return ChangedCall.of("sallow-house-south")
        .heights(heightMm, cutMm)
        .mowBy(mowBy)
        .safeUntil(lastSafe)
        .call();
  }

  @Test
  void aThirdIsSaidOfWhatReadsAsAThirdAlone() {
    assertThat(MowBy.words(call(95, 64, TODAY, null)))
        .isEqualTo("Nearly a third of the height would come off today already");
    assertThat(MowBy.words(call(96.2, 64, TODAY, null)))
        .isEqualTo("About a third of the height would come off today already");
    assertThat(MowBy.words(call(93, 64, TODAY, null)))
        .isEqualTo("A third of the height would come off by tomorrow");
    assertThat(MowBy.explained(call(110, 64, TODAY, null)))
        .isEqualTo("More than a third of the height would come off today already");
    assertThat(MowBy.explained(call(140, 64, null, null)))
        .isEqualTo("More than a third of the height would come off today already");
  }

  @Test
  void aLastSafeDayIsNotDeniedByTheDayBeforeIt() {
    Call none = call(70, 64, null, null);
    assertThat(MowBy.words(none)).startsWith("No day in sight on which a third");
    assertThat(LastSafeDay.words(none)).isEmpty();

    Call some = call(70, 64, null, LocalDate.of(2015, 6, 30));
    assertThat(MowBy.words(some)).startsWith("In most possible seasons no day is in sight");
    assertThat(LastSafeDay.words(some))
        .isEqualTo("Last safe day, in nearly all seasons: Tue 30 June");
  }
}
