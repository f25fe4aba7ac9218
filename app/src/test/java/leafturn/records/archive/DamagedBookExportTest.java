package leafturn.records.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.UUID;
import java.util.zip.ZipFile;
import leafturn.records.InputException;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.Engine;
import leafturn.records.sheet.AnySheet;
import leafturn.records.sheet.Kind;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Of a damaged book all that is whole goes into an archive, with the raw text of the rest. */
class DamagedBookExportTest {
  private static final String STATION = new UUID(1, 1).toString();
  private static final String PROPERTY = new UUID(1, 2).toString();
  private static final String LAWN = new UUID(1, 3).toString();
  private static final String OTHER_LAWN = new UUID(1, 4).toString();
  private static final String LOG = new UUID(1, 5).toString();
  private static final String PICTURE = new UUID(1, 6).toString();

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void aDamagedSheetIsSetAsideAndTheRestCanBeImported(Engine engine) throws Exception {
    Path archive = folder.resolve("book.zip");
    Manifest written =
        exported(engine, "update sheet set written_by = 'Eve' where id = '" + LOG + "'", archive);
    assertThat(written.setAside()).containsExactly("log " + LOG);
    assertThat(written.count("sheets")).isEqualTo(5);
    assertThat(member(archive, "damaged/log-" + LOG + ".txt"))
        .startsWith("log " + LOG + ": version 2 is damaged.")
        .contains("version 1, written", "by Ada", "version 2, written", "by Eve", "\"lawn\"");
    Manifest imported = BookImport.read(() -> engine.newBook(folder.resolve("restored")), archive);
    assertThat(imported.count("sheets")).isEqualTo(5);
  }

  @ParameterizedTest
  @EnumSource
  void whatBelongsToADamagedLawnGoesWithIt(Engine engine) throws Exception {
    Path archive = folder.resolve("book.zip");
    Manifest written =
        exported(engine, "update sheet set content = '{' where id = '" + LAWN + "'", archive);
    assertThat(written.setAside())
        .containsExactlyInAnyOrder("lawn " + LAWN, "log " + LOG, "photograph " + PICTURE);
    assertThat(member(archive, "damaged/log-" + LOG + ".txt"))
        .startsWith("log %s: it belongs to the lawn %s, which is set aside.".formatted(LOG, LAWN));
    assertThat(member(archive, "damaged/picture-" + PICTURE + ".bin")).hasSize(10);
    try (Book restored = restored(engine, archive)) {
      assertThat(BookCheck.run(restored).damages()).isEmpty();
      assertThat(restored.<Boolean>read(book -> book.find(Kind.LAWN, OTHER_LAWN).isPresent()))
          .isTrue();
    }
  }

  @ParameterizedTest
  @EnumSource
  void theArchiveOfASoundBookIsTheSame(Engine engine) {
    try (Book book = sound(engine)) {
      Manifest one = BookExport.write(book, folder.resolve("one.zip"), InstantSource.system());
      Manifest other =
          BookExport.writeWhatIsWhole(book, folder.resolve("two.zip"), InstantSource.system());
      assertThat(other.sameBookAs(one)).isTrue();
      assertThat(other.setAside()).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void whereNothingCanBeSetAsideTheDamageIsToldAndThereIsNoFile(Engine engine) {
    Path archive = folder.resolve("book.zip");
    assertThatThrownBy(
            () ->
                exported(
                    engine, "update sheet set kind = 'gnome' where id = '" + LOG + "'", archive))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("\"gnome\"");
    assertThat(Files.exists(archive)).isFalse();
  }

  private Manifest exported(Engine engine, String damage, Path archive) {
    try (Book book = sound(engine)) {
      book.write("Eve", writing -> writing.handle().execute(damage));
      return BookExport.writeWhatIsWhole(book, archive, InstantSource.system());
    }
  }

  private Book restored(Engine engine, Path archive) {
    BookPlace place = engine.newPlace(folder.resolve("restored"));
    BookImport.read(() -> Book.open(place, InstantSource.system()), archive);
    return Book.open(place, InstantSource.system());
  }

  private static String member(Path archive, String name) throws Exception {
    try (ZipFile zip = new ZipFile(archive.toFile(), StandardCharsets.UTF_8);
        InputStream in = zip.getInputStream(zip.getEntry(name))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private Book sound(Engine engine) {
    Book book = engine.newBook(folder.resolve("damaged"));
    AnySheet any = new AnySheet(20260503);
    book.write("Ada", w -> w.add(Kind.STATION, STATION, any.station()));
    book.write("Ada", w -> w.add(Kind.PROPERTY, PROPERTY, any.property(STATION)));
    book.write("Ada", w -> w.add(Kind.LAWN, LAWN, any.lawn(PROPERTY)));
    book.write("Ada", w -> w.add(Kind.LOG, LOG, RandomBook.log(any, LAWN)));
    book.write("Bo", w -> w.revise(Kind.LOG, LOG, 1, RandomBook.log(any, LAWN)));
    book.write("Ada", w -> RandomBook.photograph(w, PICTURE, LAWN, new byte[10]));
    book.write("Ada", w -> w.add(Kind.LAWN, OTHER_LAWN, any.lawn(PROPERTY)));
    return book;
  }
}
