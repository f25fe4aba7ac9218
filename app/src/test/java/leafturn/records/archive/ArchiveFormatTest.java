package leafturn.records.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import leafturn.records.SourceText;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.Engine;
import leafturn.records.shape.GeoJsonFile;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.Schema;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The archive is what its documentation says, and stays readable for ever. */
class ArchiveFormatTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;

  @Test
  void everyDocumentFitsItsSchema() throws IOException {
    Path file = folder.resolve("book.zip");
    try (Book book = RandomBook.open(BookPlace.of(folder.resolve("book")), 12, 120)) {
      BookExport.write(book, file, RandomBook.clock());
    }
    try (ZipFile zip = new ZipFile(file.toFile())) {
      assertFits("archive.schema.json", text(zip, "archive.json"));
      text(zip, "people.jsonl")
          .lines()
          .forEach(line -> assertFits("archive-person.schema.json", line));
      for (Kind<?> kind : Kind.all()) {
        String sheets = text(zip, "sheets/" + kind.name() + ".jsonl");
        assertThat(sheets).as("sheets of %s", kind).isNotEmpty();
        sheets.lines().forEach(line -> assertFits("archive-sheet.schema.json", line));
        sheets.lines().forEach(line -> assertContentsFit(kind, line));
      }
    }
  }

  @Test
  void whatOtherProgramsReadIsTheirFormat() throws IOException {
    Path file = folder.resolve("book.zip");
    try (Book book = RandomBook.open(BookPlace.of(folder.resolve("book")), 12, 120)) {
      BookExport.write(book, file, RandomBook.clock());
    }
    Manifest manifest = BookImport.check(file);
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (ArchiveMember member : manifest.members()) {
        if (member.name().startsWith("logs/")) {
          SourceText log = new SourceText(member.name(), text(zip, member.name()));
          assertThat(log.text()).startsWith("date,what,");
          assertThat(member.derived()).isTrue();
        } else if (member.name().startsWith("outlines/")) {
          SourceText shapes = new SourceText(member.name(), text(zip, member.name()));
          assertThatList(GeoJsonFile.read(shapes)).hasSize((int) member.count());
        }
      }
    }
    assertThat(manifest.members())
        .anySatisfy(member -> assertThat(member.name()).startsWith("logs/"))
        .anySatisfy(member -> assertThat(member.name()).startsWith("outlines/"));
  }

  /**
   * An archive that the first version of the format wrote. It must be read for ever: never write it
   * anew, add one beside it when the format changes.
   */
  @ParameterizedTest
  @EnumSource
  void theFirstFormatIsReadForEver(Engine engine) throws IOException {
    Path file = folder.resolve("book-format-1.zip");
    try (InputStream stored = ArchiveFormatTest.class.getResourceAsStream("book-format-1.zip")) {
      Files.copy(java.util.Objects.requireNonNull(stored), file);
    }
    BookPlace place = engine.newPlace(folder);
    Manifest read = Keeping.restore(place, file, InstantSource.system());
    assertThat(read.count("sheets")).isGreaterThan(100);
    assertThat(read.count("versions")).isGreaterThan(read.count("sheets"));
    try (Book book = Book.open(place, InstantSource.system())) {
      List<Kind<?>> ofThatTime = new ArrayList<>(Kind.all());
      ofThatTime.removeAll(List.of(Kind.ADVICE, Kind.FORECAST, Kind.LABORATORY, Kind.TRIAL));
      ofThatTime.removeAll(List.of(Kind.TRIAL_READINGS, Kind.TRIAL_EVENT)); // came later
      for (Kind<?> kind : ofThatTime) {
        assertThat(book.<List<?>>read(reading -> reading.all(kind))).as("%s", kind).isNotEmpty();
      }
      CheckResult check = BookCheck.run(book);
      assertThatList(check.damages()).isEmpty();
      assertThat(check.sheets()).isEqualTo(read.count("sheets"));
      assertThat(check.photographs()).isEqualTo(read.count("photographs")).isPositive();
      assertThat(check.weatherDays()).isEqualTo(read.count("weatherDays")).isPositive();
    }
  }

  private static void assertFits(String schema, String document) {
    try {
      Schema schemas = new Schema();
      assertThatList(schemas.faults("", schemas.root(schema), JSON.readTree(document))).isEmpty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void assertContentsFit(Kind<?> kind, String line) {
    try {
      for (JsonNode version : JSON.readTree(line).get("versions")) {
        assertFits("sheet-" + kind.name() + ".schema.json", version.get("content").toString());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(ZipFile zip, String name) throws IOException {
    ZipEntry entry = zip.getEntry(name);
    return entry == null
        ? ""
        : new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
  }
}
