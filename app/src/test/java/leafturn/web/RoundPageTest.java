package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.BookTitle;
import leafturn.records.round.BookRound;
import leafturn.records.round.DemoBook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the page of the round says of its weather. */
class RoundPageTest {
  @TempDir private Path folder;

  @Test
  void rainThatNobodyMeasuredIsNotTold() {
    Clock later = Clock.fixed(Instant.parse("2017-05-28T16:00:00Z"), ZoneOffset.UTC);
    try (Book book = Book.open(BookPlace.of(folder), later);
        BookRound rounds = new BookRound(book, later)) {
      DemoBook.write(book);
      assertThat(new RoundPage(rounds.today()).rainSoFar()).contains("seven days brought");

      book.write(
          "test",
          writing -> {
            BookTitle.put(writing, BookTitle.BLANK);
            return BookTitle.BLANK;
          });

      assertThat(new RoundPage(rounds.today()).rainSoFar())
          .isEqualTo(
              "Nobody has measured the rain of the last seven days; days of other years stand in.");
    }
  }
}
