package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import org.junit.jupiter.api.Test;

/** The file of the book is deleted or moved away while it is served. */
class BookGoneTest extends DemoSite {
  @Test
  void nothingIsAcknowledgedOnceTheFileIsGone() throws Exception {
    Sheet<LogSheet> entry = book.read(reading -> reading.all(Kind.LOG)).get(0);
    String path = "/sheets/" + entry.id();
    Path file = folder.resolve("book.mv.db");
    Path away = folder.resolve("away");
    Files.move(file, away);
    HttpResponse<String> refused = visitor.send(path + "/withdraw", Map.of("version", "1"));
    assertThat(refused.statusCode()).isEqualTo(503);
    assertThat(refused.body())
        .contains("The book's file is gone", "Nothing of this was saved", "puts the folder back")
        .contains("What you typed still stands in the form", "Back button");
    Files.move(away, file);
    assertThat(book.read(reading -> reading.find(Kind.LOG, entry.id())).orElseThrow().withdrawn())
        .isFalse();
    assertThat(visitor.send(path + "/withdraw", Map.of("version", "1")).statusCode())
        .isEqualTo(303);
  }

  @Test
  void aFileThatWasReplacedIsSaidToBeReplacedAndNotGone() throws Exception {
    Sheet<LogSheet> entry = book.read(reading -> reading.all(Kind.LOG)).get(0);
    Path file = folder.resolve("book.mv.db");
    Path other = folder.resolve("other");
    Files.copy(file, other);
    Files.move(other, file, StandardCopyOption.REPLACE_EXISTING);
    HttpResponse<String> refused =
        visitor.send("/sheets/" + entry.id() + "/withdraw", Map.of("version", "1"));
    assertThat(refused.statusCode()).isEqualTo(503);
    assertThat(refused.body())
        .contains(
            "The book's file was replaced", "somebody replaced it", "Nothing of this was saved")
        .doesNotContain("is gone", "deleted or moved");
  }
}
