package leafturn.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.round.DemoBook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BookCommandsTest {
  @TempDir Path folder;
  private String book;
  private String archive;

  @BeforeEach
  void writeABook() {
    Path place = folder.resolve("book");
    book = place.toString();
    archive = folder.resolve("book.zip").toString();
    try (Book open = Book.open(BookPlace.of(place), Clock.systemUTC())) {
      DemoBook.write(open);
    }
  }

  @Test
  void ofADamagedBookTheRestIsExportedAndTheDamageNamed() {
    try (Book open = Book.open(BookPlace.of(Path.of(book)), Clock.systemUTC())) {
      open.write(
          "Eve",
          writing ->
              writing
                  .handle()
                  .execute(
                      "update sheet set written_by = 'Eve' where entered ="
                          + " (select max(entered) from sheet where kind = 'log')"));
    }
    Ran exported = Ran.of("book", "export", "--book", book, archive);
    assertThat(exported.exitCode()).isEqualTo(1);
    assertThat(exported.err())
        .containsPattern("log [-0-9a-f]{36} is damaged.*: see damaged/log-")
        .contains("Everything else of the book is in the archive.");
    Ran restored = Ran.of("book", "import", "--book", folder.resolve("new").toString(), archive);
    assertThat(restored.out()).contains("1461 days of weather");
  }

  @Test
  void aBookIsBackedUpDeletedAndRestored() throws IOException {
    Path backups = Files.createDirectory(folder.resolve("backups"));
    Ran backedUp = Ran.of("book", "backup", "--book", book, backups.toString());
    assertThat(backedUp.exitCode()).as(backedUp.err()).isZero();
    assertThat(backedUp.out())
        .matches("(?s).*book-[-\\dT]+Z\\.zip: \\d+ sheets, \\d+ versions, 1461 days of weather.*");
    deleteTheBook();
    assertThat(Ran.of("book", "check", "--book", book).err()).contains("there is no book");
    Path backup;
    try (Stream<Path> files = Files.list(backups)) {
      backup = files.findFirst().orElseThrow();
    }
    Ran restored = Ran.of("book", "import", "--book", book, backup.toString());
    assertThat(restored.exitCode()).as(restored.err()).isZero();
    Ran checked = Ran.of("book", "check", "--book", book);
    assertThat(checked.exitCode()).isZero();
    assertThat(checked.out())
        .contains(": checked ")
        .endsWith(": no damage." + System.lineSeparator());
  }

  @Test
  void aDamagedBookIsToldByExitCodeLinesAndJson() throws IOException {
    try (Book open = Book.open(BookPlace.of(book), Clock.systemUTC())) {
      open.write("Eve", w -> w.handle().execute("update sheet set written_by = 'Eve'"));
    }
    Ran checked = Ran.of("book", "check", "--book", book);
    assertThat(checked.exitCode()).isEqualTo(1);
    assertThat(checked.out()).contains("its digest does not fit").contains(" damages.");
    JsonNode report =
        new ObjectMapper().readTree(Ran.of("book", "check", "--json", "--book", book).out());
    assertThat(report.get("sound").booleanValue()).isFalse();
    assertThat(report.get("damages").size()).isEqualTo(report.get("sheets").intValue());
    Ran exported = Ran.of("book", "export", "--book", book, archive);
    assertThat(exported.exitCode()).isEqualTo(1);
    assertThat(exported.out()).contains(archive + ": 0 sheets");
  }

  @Test
  void whatIsExportedIsImportedIntoANewBookOnly() {
    assertThat(Ran.of("book", "export", "--book", book, archive).out()).contains(archive + ": ");
    Ran refused = Ran.of("book", "import", "--book", book, archive);
    assertThat(refused.exitCode()).isEqualTo(2);
    assertThat(refused.err()).contains("is not empty");
    String copy = folder.resolve("copy").toString();
    assertThat(Ran.of("book", "import", "--book", copy, archive).exitCode()).isZero();
  }

  @Test
  void anArchiveReplacesNothing() throws IOException {
    Path kept = Files.writeString(Path.of(archive), "the archive of another day");
    for (String output : List.of("export", "backup")) {
      Ran refused = Ran.of("book", output, "--book", book, archive);
      assertThat(refused.exitCode()).as(output).isEqualTo(2);
      assertThat(refused.err())
          .contains(archive + ": it is there already", "give another name")
          .hasLineCount(1);
      assertThat(kept).hasContent("the archive of another day");
    }
  }

  @Test
  void whatIsMissingOrWrongIsToldInASentence() {
    String nowhere = folder.resolve("nowhere").toString();
    for (List<String> wrong :
        List.of(
            List.of("book", "export", "--book", nowhere, archive),
            List.of("book", "import", "--book", nowhere, archive),
            List.of("book", "backup", "--book", book, nowhere),
            List.of("book", "export", "--book", book, nowhere + "/x.zip"),
            List.of("book", "check", "--book", "jdbc:other:x"),
            List.of("book", "check"),
            List.of("book", "mend"))) {
      Ran ran = Ran.of(wrong);
      assertThat(ran.exitCode()).as("%s", wrong).isEqualTo(2);
      assertThat(ran.err().lines()).as("%s", wrong).hasSize(1);
      assertThat(Path.of(nowhere)).doesNotExist();
    }
    assertThat(Ran.of("book").out()).contains("export", "import", "check", "backup");
  }

  private void deleteTheBook() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of(book))) {
      for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
