package leafturn.records.book;

import java.nio.file.Path;
import java.time.InstantSource;

/** The two databases a book may lie in; every test of the store runs on both. */
public enum Engine {
  H2 {
    @Override
    public BookPlace newPlace(Path folder) {
      return BookPlace.of(folder.resolve("book"));
    }
  },
  POSTGRESQL {
    @Override
    public BookPlace newPlace(Path folder) {
      return BookPlace.of(PostgresqlServer.running().newDatabase());
    }
  };

  /** A place with no book yet. */
  public abstract BookPlace newPlace(Path folder);

  /** A new, empty book. */
  public Book newBook(Path folder) {
    return Book.open(newPlace(folder), InstantSource.system());
  }
}
