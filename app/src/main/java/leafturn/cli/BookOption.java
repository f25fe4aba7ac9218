package leafturn.cli;

import leafturn.records.book.BookPlace;
import picocli.CommandLine.Option;

/** The option that names a book: mix it in with {@code @Mixin BookOption book}. */
final class BookOption {
  @Option(
      names = "--book",
      paramLabel = "PLACE",
      required = true,
      description = "The book: its folder, or the jdbc:postgresql: URL of its database.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private String given;

  /**
   * Where it lies.
   *
   * @throws leafturn.records.InputException when no book can lie there
   */
  BookPlace place() {
    return BookPlace.of(given);
  }
}
