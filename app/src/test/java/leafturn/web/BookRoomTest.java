package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.quantity.Units;
import leafturn.records.archive.BookImport;
import leafturn.records.people.People;
import leafturn.records.people.Person;
import leafturn.records.people.Role;
import org.junit.jupiter.api.Test;

class BookRoomTest extends DemoSite {
  private static final Pattern KEPT = Pattern.compile("href=\"(/book/archives/[^\"]+\\.zip)\"");

  @Test
  void anOwnerTakesTheWholeBookAway() throws Exception {
    Asking owner = new Asking(server);
    assertThat(owner.get("/book").body()).contains("No archive has been written yet");
    HttpResponse<byte[]> answer = owner.bytes("/book/archive");
    assertThat(answer.headers().firstValue("Content-Disposition").orElse(""))
        .matches("attachment; filename=\"book-.*Z\\.zip\"");
    assertIsTheBook(answer.body());
  }

  @Test
  void anArchiveIsWrittenListedAndSent() throws Exception {
    Asking owner = new Asking(server);
    assertThat(owner.postForm("/book/archives").body())
        .contains("The archive was written, and reads back whole.", "The newest archive is of");
    assertThat(owner.postForm("/book/archives").body()).contains("Nothing has changed since");
    Matcher link = KEPT.matcher(owner.get("/book").body());
    assertThat(link.find()).isTrue();
    assertIsTheBook(owner.bytes(link.group(1)).body());
    assertThat(owner.get("/book/archives/book-2001-01-01T00-00-00Z.zip").statusCode())
        .isEqualTo(404);
    assertThat(owner.get("/book/archives/..%2Fbook.mv.db").statusCode()).isIn(400, 404);
  }

  @Test
  void aCheckTellsWhatItFound() throws Exception {
    Asking owner = new Asking(server);
    assertThat(owner.postForm("/book/check").statusCode()).isEqualTo(303);
    assertThat(owner.get("/book").body()).contains(": no damage.");
    book.write("Eve", w -> w.handle().execute("delete from revision where place = 'rules'"));
    owner.postForm("/book/check");
    assertThat(owner.get("/book").body()).contains(": 1 damage.", "There is no revision of rules.");
  }

  @Test
  void nobodyButAnOwnerGetsIn() throws Exception {
    Person adviser =
        book.write("Owner", w -> People.add(w, "Bo Linden", Role.ADVISER, Units.METRIC));
    book.write(
        "Owner",
        w -> {
          People.setPasswordHash(w, adviser.id(), "none");
          return true;
        });
    Asking asking = Asking.as(server, book, adviser.id());
    for (String path : new String[] {"/book", "/book/archive", "/book/archives/x.zip"}) {
      assertThat(asking.get(path).statusCode()).as(path).isEqualTo(403);
    }
    assertThat(asking.postForm("/book/archives").statusCode()).isEqualTo(403);
    assertThat(asking.postForm("/book/check").statusCode()).isEqualTo(403);
  }

  private void assertIsTheBook(byte[] zip) throws Exception {
    Path file = Files.write(folder.resolve("taken.zip"), zip);
    assertThat(new String(zip, 0, 2, StandardCharsets.US_ASCII)).isEqualTo("PK");
    assertThat(BookImport.check(file).count("sheets")).isGreaterThan(10);
  }
}
