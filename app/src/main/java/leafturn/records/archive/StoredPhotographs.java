package leafturn.records.archive;

import java.util.List;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookWriting;
import leafturn.records.book.Photographs;

/** The bytes of a book's photographs. */
final class StoredPhotographs {
  private StoredPhotographs() {}

  /** The ids of all photographs whose bytes are there. */
  static List<String> ids(BookReading book) {
    return book.handle()
        .createQuery("select id from photograph order by id")
        .mapTo(String.class)
        .list();
  }

  /** The picture of an id that {@link #ids} gave. */
  static byte[] bytes(BookReading book, String id) {
    return Photographs.bytes(book, id).orElseThrow();
  }

  static void put(BookWriting book, String id, byte[] bytes) {
    book.handle().execute("insert into photograph (id, bytes) values (?, ?)", id, bytes);
  }
}
