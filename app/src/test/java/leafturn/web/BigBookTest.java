package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.TimeUnit;
import leafturn.advice.call.RoundOfLawns;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.round.BigBook;
import leafturn.records.round.BookRound;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The book of the load figures, in small: every call can be made and every page is there. */
class BigBookTest {
  private static final BigBook.Size SMALL = new BigBook.Size(12, 5, 2);
  private static final int MOST_TRIES = 200;

  @TempDir private Path folder;

  @Test
  void everyLawnHasACallAndAPage() throws Exception {
    try (Book book = Book.open(BookPlace.of(folder), Clock.systemUTC());
        BookRound rounds = new BookRound(book, Clock.systemUTC())) {
      BigBook.write(book, SMALL);
      RoundOfLawns round = rounds.today();
      assertThat(round.lawns()).hasSize(SMALL.lawns());
      assertThat(round.today()).isEqualTo(BigBook.TODAY);
      try (LeafturnServer server = LeafturnServer.start(book, Clock.systemUTC(), 0)) {
        for (int i = 1; i <= SMALL.lawns(); i++) {
          assertThat(get(server, "/lawns/lawn-" + i).statusCode()).isEqualTo(200);
        }
        assertThat(settled(server)).doesNotContain("being worked out", "No advice can be given");
      }
    }
  }

  /** The round once its calls are made. */
  private static String settled(LeafturnServer server) throws Exception {
    String page = get(server, "/").body();
    for (int tries = 0; page.contains("being worked out") && tries < MOST_TRIES; tries++) {
      TimeUnit.MILLISECONDS.sleep(50);
      page = get(server, "/").body();
    }
    return page;
  }

  private static HttpResponse<String> get(LeafturnServer server, String path) throws Exception {
    HttpRequest request = HttpRequest.newBuilder(server.address().resolve(path)).build();
    return HttpClient.newHttpClient().send(request, BodyHandlers.ofString());
  }
}
