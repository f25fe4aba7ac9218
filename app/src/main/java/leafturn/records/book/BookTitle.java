package leafturn.records.book;

import java.time.LocalDate;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;

/**
 * What stands on the cover of a book.
 *
 * @param adviser whose round it holds, at most 80 characters; may be empty
 * @param standing what a reader must know about the book as a whole, for instance that it is
 *     invented; at most 400 characters; may be empty
 * @param fixedDay the day that is today in this book, or null where the calendar decides
 */
public record BookTitle(String adviser, String standing, @Nullable LocalDate fixedDay) {
  /** The title of a book on whose cover nothing was written yet. */
  public static final BookTitle BLANK = new BookTitle("", "", null);

  private static final int MOST_ADVISER = 80;
  private static final int MOST_STANDING = 400;

  public BookTitle {
    if (adviser.length() > MOST_ADVISER || standing.length() > MOST_STANDING) {
      throw new IllegalArgumentException(
          "the adviser's name takes %d characters and the standing %d, but they have %d and %d"
              .formatted(MOST_ADVISER, MOST_STANDING, adviser.length(), standing.length()));
    }
  }

  /** The title of the book. */
  public static BookTitle of(BookReading reading) {
    return reading
        .handle()
        .createQuery("select adviser, standing, fixed_day from book where id = 1")
        .map(
            (row, context) ->
                new BookTitle(
                    row.getString("adviser"),
                    row.getString("standing"),
                    row.getObject("fixed_day", LocalDate.class)))
        .findOne()
        .orElse(BLANK);
  }

  /** Writes a title in place of the one there was. */
  public static void put(BookWriting writing, BookTitle title) {
    int replaced =
        writing
            .handle()
            .execute(
                "update book set adviser = ?, standing = ?, fixed_day = ? where id = 1",
                title.adviser,
                title.standing,
                title.fixedDay);
    if (replaced == 0) {
      writing
          .handle()
          .execute(
              "insert into book (id, adviser, standing, fixed_day, created_at)"
                  + " values (1, ?, ?, ?, ?)",
              title.adviser,
              title.standing,
              title.fixedDay,
              writing.now().atOffset(ZoneOffset.UTC));
    }
    writing.raise("register");
  }
}
