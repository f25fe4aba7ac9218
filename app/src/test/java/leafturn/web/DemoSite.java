package leafturn.web;

import java.nio.file.Path;
import java.time.Clock;
import leafturn.quantity.Units;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.people.People;
import leafturn.records.people.Person;
import leafturn.records.round.DemoBook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Tests that visit the demonstration book, served afresh for each of them. */
abstract class DemoSite {
  @TempDir Path folder;
  Book book;
  LeafturnServer server;
  SiteVisitor visitor;

  /** Whoever sits at the machine. */
  Asking asking;

  @BeforeEach
  void start() {
    book = Book.open(BookPlace.of(folder), Clock.systemUTC());
    DemoBook.write(book);
    prepare();
    server = LeafturnServer.start(book, Clock.systemUTC(), 0);
    visitor = new SiteVisitor(server.address());
    asking = new Asking(server);
  }

  /** What a test writes into the book before it is served. */
  void prepare() {}

  /** The owner reads US units from now on. */
  void inUsUnits() {
    book.write(
        "test",
        writing -> {
          People.setUnits(writing, Person.LOCAL_OWNER, Units.US);
          return true;
        });
  }

  @AfterEach
  void stop() {
    server.close();
    book.close();
  }
}
