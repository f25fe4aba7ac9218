package leafturn.records.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import leafturn.quantity.Units;
import leafturn.records.book.Sheet;
import leafturn.records.round.PastAdvice.Entered;
import leafturn.records.round.PastAdvice.Outcome;
import leafturn.records.round.PastAdvice.Piece;
import leafturn.records.sheet.AdviceSheet;
import leafturn.records.sheet.AdviceSheet.Forecast;
import leafturn.records.sheet.AdviceSheet.Range;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.Sight;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether advice was followed, by the log. */
class PastAdviceTest {
  private static final LocalDate MONDAY = LocalDate.of(2015, 5, 25);
  private static final LocalDate LONG_AFTER = MONDAY.plusDays(30);

  /** Advice given at six in the morning, to mow so many days later; -1 for never. */
  private static Sheet<AdviceSheet> given(int day, int mowInDays, @Nullable Boolean returned) {
    LocalDate on = MONDAY.plusDays(day);
    AdviceSheet advice =
        new AdviceSheet(
            UUID.randomUUID().toString(),
            on,
            AdviceSheet.Way.PAGE,
            Units.METRIC,
            returned == null ? "leave alone" : returned ? "mow and return" : "mow and collect",
            mowInDays < 0 ? null : on.plusDays(mowInDays),
            returned,
            "Advice of day " + day,
            List.of(),
            mowInDays < 0 ? null : new Range(mowInDays + 2, mowInDays + 4.5, mowInDays + 6),
            new Forecast(90, List.of(92.0, 94.0), List.of(93.0, 96.0), List.of(94.0, 98.0)),
            mowInDays < 0
                ? null
                : new AdviceSheet.Expected(80.0, null, null, null, null, null, null, null),
            "0",
            Map.of(),
            "test");
    return new Sheet<>(
        UUID.randomUUID().toString(), Kind.ADVICE, 1, false, at(day, 6), "Wren", advice);
  }

  private static Instant at(int day, int hour) {
    return MONDAY.plusDays(day).atTime(LocalTime.of(hour, 0)).toInstant(ZoneOffset.UTC);
  }

  private static Entered logged(int day, Done done) {
    LocalDate on = MONDAY.plusDays(day);
    return new Entered(new LogSheet("lawn", on, null, done, null, List.of()), at(day, 12));
  }

  private static Entered mown(int day, double returnedShare) {
    return logged(day, new Done.Mown(97.0, 76.0, returnedShare, null, null, null, null, false));
  }

  private static Entered seen(int day, List<Sight> things, List<Sight> notThere) {
    return logged(day, new Done.Observed(things, notThere, null, null));
  }

  private static Piece only(PastAdvice past) {
    assertThat(past.pieces()).hasSize(1);
    return past.pieces().get(0);
  }

  @ParameterizedTest
  @CsvSource({
    "2, 1, FOLLOWED",
    "1, 1, FOLLOWED",
    "0, 1, ANOTHER_DAY",
    "6, 1, FOLLOWED", // a third would come off in the middle of the seventh day
    "7, 1, ANOTHER_DAY",
    "2, 0, CLIPPINGS_OTHERWISE",
    "2, 0.5, FOLLOWED"
  })
  void adviceIsFollowedWithinItsWindow(int mownOn, double returnedShare, Outcome outcome) {
    PastAdvice past =
        PastAdvice.of(List.of(given(0, 2, true)), List.of(mown(mownOn, returnedShare)), LONG_AFTER);
    assertThat(only(past).outcome()).isEqualTo(outcome);
    assertThat(past.tested()).isEqualTo(1);
    assertThat(past.with(outcome)).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource({"76, FOLLOWED", "64, HEIGHT_OTHERWISE", "90, HEIGHT_OTHERWISE", ", FOLLOWED"})
  void theHeightCountsToo(@Nullable Double leftMm, Outcome outcome) {
    Done cut = new Done.Mown(125.0, leftMm, 1, null, null, null, null, false);
    PastAdvice past =
        PastAdvice.of(List.of(given(0, 2, true)), List.of(logged(2, cut)), LONG_AFTER);
    assertThat(only(past).outcome()).isEqualTo(outcome);
  }

  @Test
  void whatWasNotMownIsOpenUntilItsWindowHasPassed() {
    List<Sheet<AdviceSheet>> advice = List.of(given(0, 2, true));
    assertThat(only(PastAdvice.of(advice, List.of(), MONDAY.plusDays(6))).outcome())
        .isEqualTo(Outcome.OPEN);
    assertThat(only(PastAdvice.of(advice, List.of(), MONDAY.plusDays(7))).outcome())
        .isEqualTo(Outcome.NOT_MOWN);
  }

  @Test
  void adviceThatStaysTheSameIsOnePiece() {
    PastAdvice past =
        PastAdvice.of(
            List.of(given(0, 3, true), given(1, 2, true), given(2, 1, true)),
            List.of(mown(3, 1)),
            LONG_AFTER);
    assertThat(only(past).firstDay()).isEqualTo(MONDAY);
    assertThat(only(past).advice().day()).isEqualTo(MONDAY.plusDays(2));
    assertThat(only(past).forecastOn()).isEqualTo(MONDAY.plusDays(2));
    assertThat(only(past).forecast()).isEqualTo(new Range(92, 93, 94));
    assertThat(only(past).foretold()).isTrue();
    assertThat(only(past).outcome()).isEqualTo(Outcome.FOLLOWED);
  }

  @Test
  void newerAdviceStandsInPlaceOfTheOlder() {
    PastAdvice past =
        PastAdvice.of(
            List.of(given(0, 3, true), given(1, 0, false)), List.of(mown(1, 0)), LONG_AFTER);
    assertThat(past.pieces().stream().map(Piece::outcome))
        .containsExactly(Outcome.FOLLOWED, Outcome.REPLACED);
    assertThat(past.tested()).isEqualTo(1);
  }

  @Test
  void adviceThatCameAfterTheMowingWasLoggedIsNotHeldAgainstIt() {
    Sheet<AdviceSheet> before = given(0, 0, true);
    Sheet<AdviceSheet> rest = given(0, -1, null);
    Sheet<AdviceSheet> evening =
        new Sheet<>(rest.id(), Kind.ADVICE, 1, false, at(0, 18), "Wren", rest.content());
    PastAdvice past = PastAdvice.of(List.of(before, evening), List.of(mown(0, 1)), LONG_AFTER);
    assertThat(past.pieces().stream().map(Piece::outcome))
        .containsExactly(Outcome.LEFT_ALONE, Outcome.FOLLOWED);
    assertThat(past.tested()).isEqualTo(1);
  }

  @Test
  void whoeverMowsWhatWasToBeLeftAloneDidNotFollow() {
    PastAdvice past = PastAdvice.of(List.of(given(0, -1, null)), List.of(mown(1, 1)), LONG_AFTER);
    assertThat(only(past).outcome()).isEqualTo(Outcome.MOWN_ALL_THE_SAME);
    assertThat(past.tested()).isZero();
  }

  @Test
  void whatWasSeenAfterACutBelongsToItUntilTheNext() {
    PastAdvice past =
        PastAdvice.of(
            List.of(given(0, 1, true)),
            List.of(
                seen(0, List.of(Sight.CLUMPS), List.of()),
                mown(1, 1),
                seen(2, List.of(Sight.CLUMPS, Sight.MOSS), List.of()),
                seen(3, List.of(Sight.MOSS), List.of()),
                seen(6, List.of(), List.of(Sight.CLIPPINGS_STILL_SEEN)),
                mown(9, 1),
                seen(10, List.of(Sight.CLUMPS), List.of())),
            LONG_AFTER);
    assertThat(only(past).seenAfter().stream().map(LogSheet::day))
        .containsExactly(MONDAY.plusDays(2), MONDAY.plusDays(6));
  }
}
