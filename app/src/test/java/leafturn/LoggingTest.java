package leafturn;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import leafturn.cli.LeafturnCommand;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.round.DemoBook;
import leafturn.web.LeafturnServer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slf4j.LoggerFactory;
import picocli.CommandLine.Command;

/** What the shipped logging puts on the terminal: traces of the server's faults alone. */
class LoggingTest {
  private final ByteArrayOutputStream terminal = new ByteArrayOutputStream();
  private final PrintStream before = System.err;

  @TempDir private Path folder;

  @BeforeEach
  void listen() {
    System.setErr(new PrintStream(terminal, true, StandardCharsets.UTF_8));
  }

  @AfterEach
  void listenNoMore() {
    System.setErr(before);
  }

  @Test
  void aFaultOfAPageIsLoggedWithItsTraceAndToldWithoutIt() throws Exception {
    Clock clock = Clock.systemUTC();
    try (Book book = withALawnOfNothing(clock);
        LeafturnServer server = LeafturnServer.start(book, clock, 0)) {
      HttpRequest request =
          HttpRequest.newBuilder(server.address().resolve("/lawns/nothing")).build();
      var answer = HttpClient.newHttpClient().send(request, BodyHandlers.ofString());

      assertThat(answer.statusCode()).isEqualTo(500);
      assertThat(answer.body())
          .contains("This page could not be made.")
          .doesNotContain("NullPointer", "\tat ");
    }
    assertThat(logged())
        .containsPattern("\\d{4}-\\d\\d-\\d\\dT\\S+ ERROR \\S+ GET /lawns/nothing failed: ")
        .contains("\tat leafturn.records.book.BookReading.all(BookReading.java:");
  }

  /** A lawn whose sheet says nothing: no reader of sheets lets one through. */
  private Book withALawnOfNothing(Clock clock) {
    Book book = Book.open(BookPlace.of(folder), clock);
    DemoBook.write(book);
    book.write(
        "nobody",
        writing -> writing.handle().execute("update sheet set content = '{}' where kind = 'lawn'"));
    return book;
  }

  @Test
  void aFaultOfACommandIsOneSentence() {
    @Command(name = "broken")
    class Broken implements Callable<Integer> {
      @Override
      public Integer call() {
        IllegalStateException fault = new IllegalStateException("not so");
        LoggerFactory.getLogger("org.library").warn("something is odd", fault);
        throw fault;
      }
    }
    StringWriter out = new StringWriter();

    int exitCode =
        new LeafturnCommand(
                new PrintWriter(out),
                new PrintWriter(System.err, false, StandardCharsets.UTF_8),
                new Broken())
            .run("broken");

    assertThat(exitCode).isEqualTo(3);
    assertThat(out.toString()).isEmpty();
    assertThat(logged().lines())
        .satisfiesExactly(
            line -> assertThat(line).isEqualTo("WARN org.library something is odd"),
            line -> assertThat(line).startsWith("Leafturn failed (IllegalStateException: not so)"));
  }

  private String logged() {
    return terminal.toString(StandardCharsets.UTF_8);
  }
}
