package leafturn.records.round;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;
import leafturn.advice.call.Call;
import leafturn.advice.call.LawnOnRound;
import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.AdviceSheet;
import leafturn.records.sheet.AdviceSheet.Way;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Advice is kept as it was given, once for each lawn, day and changed content. */
class AdviceKeeperTest {
  private static final String LAWN = "linden-house-back";
  private static final LocalDate ON = LocalDate.of(2015, 5, 28);
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2015-06-01T11:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;
  private Book book;
  private BookRound rounds;

  @BeforeEach
  void open() {
    book = Book.open(BookPlace.of(folder), Clock.systemUTC());
    DemoBook.write(book);
    rounds = new BookRound(book, CLOCK);
  }

  @AfterEach
  void close() {
    rounds.close();
    book.close();
  }

  private List<LawnOnRound> lawn(Units units) {
    return rounds.today(register -> register.onlyLawn(LAWN), units, Duration.ofMinutes(1)).lawns();
  }

  private List<Sheet<AdviceSheet>> kept() {
    String id = lawnId();
    return book.read(reading -> reading.ofLawn(Kind.ADVICE, id));
  }

  private String lawnId() {
    return book.read(reading -> reading.at(Kind.LAWN, LAWN).orElseThrow().id());
  }

  private void given(List<LawnOnRound> lawns, Way way, String by) {
    try (AdviceKeeper keeper = new AdviceKeeper(book)) {
      keeper.given(lawns, way, by);
    }
  }

  @Test
  void itIsKeptWithWhatItRestedOn() {
    List<LawnOnRound> lawns = lawn(Units.METRIC);
    Call call = lawns.get(0).call();
    given(lawns, Way.CALENDAR, "Wren Ashdown");
    assertThat(kept())
        .singleElement()
        .satisfies(sheet -> assertThat(sheet.writtenBy()).isEqualTo("Wren Ashdown"))
        .extracting(Sheet::content)
        .satisfies(
            advice -> {
              assertThat(advice.day()).isEqualTo(ON);
              assertThat(advice.way()).isEqualTo(Way.CALENDAR);
              assertThat(advice.sentence()).isEqualTo(call.sentence());
              assertThat(advice.mowOn()).isEqualTo(call.mowOn());
              assertThat(advice.reasons()).hasSameSizeAs(call.reasons());
              assertThat(advice.forecast().middleMm()).hasSize(14);
              assertThat(advice.rules()).hasSize(8);
              assertThat(advice.thresholds()).isEmpty();
              assertThat(advice.madeBy()).startsWith("leafturn ");
            });
  }

  @Test
  void lookingAgainOrInOtherUnitsAddsNothing() {
    given(lawn(Units.METRIC), Way.PAGE, "Wren Ashdown");
    given(lawn(Units.METRIC), Way.PHONE_LOG, "Ines");
    given(lawn(Units.US), Way.PAGE, "Ines");
    assertThat(kept()).hasSize(1);
  }

  @Test
  void adviceThatChangedIsKeptBesideTheEarlier() {
    given(lawn(Units.METRIC), Way.PAGE, "Wren Ashdown");
    LogSheet mown =
        new LogSheet(
            lawnId(),
            ON,
            null,
            new Done.Mown(null, null, 1, null, null, null, null, false),
            null,
            List.of());
    book.write("Ines", writing -> writing.add(Kind.LOG, UUID.randomUUID().toString(), mown));
    given(lawn(Units.METRIC), Way.PAGE, "Wren Ashdown");
    assertThat(kept()).hasSize(2);
    assertThat(kept().get(1).content().sentence()).isNotEqualTo(kept().get(0).content().sentence());
  }

  @Test
  void keepingItChangesNoCall() {
    List<LawnOnRound> before = lawn(Units.METRIC);
    given(before, Way.PAGE, "Wren Ashdown");
    assertThat(lawn(Units.METRIC).get(0).call()).isSameAs(before.get(0).call());
  }

  @Test
  void aRoundOfManyLawnsIsKeptWhole() {
    given(
        rounds.today(UnaryOperator.identity(), Units.METRIC, Duration.ofMinutes(1)).lawns(),
        Way.PAGE,
        "Wren Ashdown");
    List<Sheet<AdviceSheet>> all = book.read(reading -> reading.all(Kind.ADVICE));
    assertThat(all).hasSize(6);
  }

  @Test
  void nobodyChangesItAfterwards() {
    given(lawn(Units.METRIC), Way.PAGE, "Wren Ashdown");
    Sheet<AdviceSheet> sheet = kept().get(0);
    assertThatThrownBy(
            () -> book.write("Ines", writing -> writing.withdraw(Kind.ADVICE, sheet.id(), 1)))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("kept as it was given");
  }

  @Test
  void aBookThatIsGoneStopsNobody() {
    List<LawnOnRound> lawns = lawn(Units.METRIC);
    try (AdviceKeeper keeper = new AdviceKeeper(book)) {
      rounds.close();
      book.close();
      keeper.given(lawns, Way.PAGE, "Wren Ashdown");
    }
    book = Book.open(BookPlace.of(folder), Clock.systemUTC());
    assertThat(kept()).isEmpty();
  }
}
