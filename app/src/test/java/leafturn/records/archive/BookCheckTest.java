package leafturn.records.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;

import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import leafturn.records.book.Book;
import leafturn.records.book.Engine;
import leafturn.records.sheet.AnySheet;
import leafturn.records.sheet.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Breaks each thing that a check looks at, and sees it told. */
class BookCheckTest {
  private static final String STATION = new UUID(1, 1).toString();
  private static final String PROPERTY = new UUID(1, 2).toString();
  private static final String LAWN = new UUID(1, 3).toString();
  private static final String LOG = new UUID(1, 4).toString();

  private static final String PICTURE = new UUID(1, 5).toString();
  private static final String OTHER_PICTURE = new UUID(1, 6).toString();

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void aSoundBookIsCleanAndCounted(Engine engine) {
    try (Book book = sound(engine)) {
      CheckResult result = BookCheck.run(book);
      assertThatList(result.damages()).isEmpty();
      assertThat(result.summary())
          .startsWith("checked 6 sheets, 8 versions, 2 days of weather, 2 photographs, 1 person")
          .endsWith("no damage");
    }
  }

  @Test
  void oneOfAThingIsToldInTheSingular() {
    assertThat(new CheckResult(1, 1, 1, 1, 1, List.of("lost")).summary())
        .isEqualTo(
            "checked 1 sheet, 1 version, 1 day of weather, 1 photograph, 1 person: 1 damage");
  }

  @ParameterizedTest
  @EnumSource
  void aChangedDocumentIsToldByItsDigest(Engine engine) {
    assertTold(
        engine,
        "update sheet set content = replace(content, '草', '木') where id = '" + LOG + "'",
        "log " + LOG + ", version 3: it was changed from outside");
  }

  @ParameterizedTest
  @EnumSource
  void aChangedWriterOfAnEarlierVersionIsTold(Engine engine) {
    assertTold(
        engine,
        "update sheet_before set written_by = 'Eve' where id = '" + LOG + "' and version = 2",
        "log " + LOG + ", version 2: it was changed from outside");
  }

  @ParameterizedTest
  @EnumSource
  void aLostEarlierVersionIsTold(Engine engine) {
    assertTold(
        engine,
        "delete from sheet_before where id = '" + LOG + "' and version = 1",
        "log " + LOG + ": its versions do not run from 1 without holes; version 2");
  }

  @ParameterizedTest
  @EnumSource
  void anUnreadableDocumentIsTold(Engine engine) {
    assertTold(
        engine,
        "update sheet set content = '{\"lawn\":' where id = '" + LOG + "'",
        "its digest does not fit",
        "log " + LOG + ", version 3: its content cannot be read");
  }

  @ParameterizedTest
  @EnumSource
  void anUnknownKindIsTold(Engine engine) {
    assertTold(
        engine,
        "update sheet set kind = 'gnome' where id = '" + LOG + "'",
        "kind \"gnome\", which this program does not know");
  }

  @ParameterizedTest
  @EnumSource
  void aStationThatIsNoneIsTold(Engine engine) {
    try (Book book = sound(engine)) {
      book.write(
          "Ada", w -> w.add(Kind.PROPERTY, LAWN.replace('3', '9'), new AnySheet(9).property(LAWN)));
      assertThatList(BookCheck.run(book).damages())
          .singleElement()
          .asString()
          .contains("its station " + LAWN + " is a lawn, not a station");
    }
  }

  @ParameterizedTest
  @EnumSource
  void columnsThatDisagreeWithTheContentAreTold(Engine engine) {
    assertTold(
        engine,
        "update sheet set lawn = null, address = 'elsewhere', on_day = date '1850-01-01' where id = '"
            + LOG
            + "'",
        "log " + LOG + ": the lawn of its row, null, is not that of its content, " + LAWN,
        "log " + LOG + ": the day of its row, 1850-01-01, is not that of its content",
        "log " + LOG + ": the address of its row, elsewhere, is not that of its content, null");
  }

  @ParameterizedTest
  @EnumSource
  void impossibleWeatherIsTold(Engine engine) {
    assertTold(
        engine,
        "update station_day set rain_mm = 5000, minimum_c = 30 where on_day = date '2020-02-29'",
        "The weather of station " + STATION + " on 2020-02-29, rain_mm: 5000 is out of range",
        "the maximum of 12.5 °C lies below the minimum of 30 °C");
  }

  @ParameterizedTest
  @EnumSource
  void aMissingRevisionIsTold(Engine engine) {
    assertTold(
        engine,
        "delete from revision where place in ('rules', '" + LAWN + "')",
        "There is no revision of " + LAWN,
        "There is no revision of rules");
  }

  @ParameterizedTest
  @EnumSource
  void aSpoiltPictureIsTold(Engine engine) {
    assertTold(
        engine,
        "update photograph set bytes = (select bytes from photograph where id = '"
            + PICTURE
            + "') where id = '"
            + OTHER_PICTURE
            + "'",
        "photograph " + OTHER_PICTURE + ": its picture is damaged");
  }

  @ParameterizedTest
  @EnumSource
  void aLostPictureIsTold(Engine engine) {
    assertTold(
        engine,
        "delete from photograph where id = '" + PICTURE + "'",
        "photograph " + PICTURE + ": its picture is missing");
  }

  private void assertTold(Engine engine, String damage, String... sentences) {
    try (Book book = sound(engine)) {
      book.write("Eve", writing -> writing.handle().execute(damage));
      List<String> damages = BookCheck.run(book).damages();
      assertThatList(damages).hasSameSizeAs(sentences);
      for (String sentence : sentences) {
        assertThat(damages).anySatisfy(told -> assertThat(told).contains(sentence));
      }
    }
  }

  private Book sound(Engine engine) {
    Book book = engine.newBook(folder);
    AnySheet any = new AnySheet(20260503);
    book.write("Ada", w -> w.add(Kind.STATION, STATION, any.station()));
    book.write("Ada", w -> w.add(Kind.PROPERTY, PROPERTY, any.property(STATION)));
    book.write("Ada", w -> w.add(Kind.LAWN, LAWN, any.lawn(PROPERTY)));
    book.write("Ada", w -> w.add(Kind.LOG, LOG, RandomBook.log(any, LAWN)));
    book.write("Bo", w -> w.revise(Kind.LOG, LOG, 1, RandomBook.log(any, LAWN)));
    book.write("Cy", w -> w.revise(Kind.LOG, LOG, 2, RandomBook.log(any, LAWN)));
    book.write("Ada", w -> RandomBook.twoDays(w, STATION));
    book.write("Ada", w -> RandomBook.photograph(w, PICTURE, LAWN, new byte[3_000_000]));
    book.write("Ada", w -> RandomBook.photograph(w, OTHER_PICTURE, LAWN, new byte[10]));
    return book;
  }
}
