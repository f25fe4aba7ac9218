package leafturn.records.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import leafturn.advice.call.Call;
import leafturn.quantity.Units;
import leafturn.records.book.Book;
import leafturn.records.book.Engine;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** No call is given once something it rests on has changed, and none is made anew without need. */
class KeptCallsTest {
  private static final String LAWN = "linden-house-back";
  private static final LocalDate ON = LocalDate.of(2015, 5, 28);
  private static final Duration PATIENCE = Duration.ofMinutes(1);
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2015-06-01T11:00:00Z"), ZoneOffset.UTC);

  @TempDir private Path folder;

  static Stream<Arguments> enginesAndChanges() {
    return Stream.of(Engine.values())
        .flatMap(engine -> EarlierChange.all().map(change -> Arguments.of(engine, change)));
  }

  @ParameterizedTest
  @MethodSource("enginesAndChanges")
  void everyEarlierChangeChangesTheAnswer(Engine engine, EarlierChange change) {
    try (Book book = demo(engine);
        BookRound rounds = new BookRound(book, CLOCK)) {
      Call before = call(rounds);
      assertThat(call(rounds)).isSameAs(before);

      book.write(
          "test",
          writing -> {
            change.writing().accept(writing);
            return change;
          });

      Call after = call(rounds);
      assertThat(after).isNotEqualTo(before);
      try (BookRound fresh = new BookRound(book, CLOCK)) {
        assertThat(after).isEqualTo(call(fresh));
      }
    }
  }

  @Test
  void aWithdrawnEntryThatIsRestoredGivesTheFirstAnswerAgain() {
    try (Book book = demo(Engine.H2);
        BookRound rounds = new BookRound(book, CLOCK)) {
      Call before = call(rounds);
      String entry = book.read(EarlierChange::lastMowing).id();
      book.write("test", writing -> writing.withdraw(Kind.LOG, entry, 1));
      assertThat(call(rounds)).isNotEqualTo(before);
      book.write("test", writing -> writing.restore(Kind.LOG, entry, 2));
      assertThat(call(rounds)).isEqualTo(before);
    }
  }

  @Test
  void whatChangesElsewhereLeavesACallAsItIs() {
    try (Book book = demo(Engine.H2);
        BookRound rounds = new BookRound(book, CLOCK)) {
      Call before = call(rounds);
      book.write(
          "test",
          writing -> {
            String other = EarlierChange.lawn(writing, "heron-bank-play").id();
            LogSheet watered = new LogSheet(other, ON, null, new Done.Watered(9), null, List.of());
            return writing.add(Kind.LOG, "00000000-0000-4000-8000-000000000007", watered);
          });
      assertThat(call(rounds)).isSameAs(before);
    }
  }

  private Book demo(Engine engine) {
    Book book = Book.open(engine.newPlace(folder), CLOCK);
    DemoBook.write(book);
    return book;
  }

  private static Call call(BookRound rounds) {
    return rounds
        .today(register -> register.onlyLawn(LAWN), Units.METRIC, PATIENCE)
        .lawns()
        .get(0)
        .call();
  }
}
