package leafturn.cli;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.concurrent.Callable;
import leafturn.records.archive.Keeping;
import leafturn.records.archive.Manifest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads an archive into a new book. */
@Command(
    name = "import",
    description = {
      "Reads an archive into a new book. Everything is checked first; then all of it is written",
      "or nothing. People come without passwords: 'leafturn book owner' gives an owner one.",
      ""
    },
    footer = {"", "Example: leafturn book import --book garden-book book.zip"})
final class BookImportCommand implements Callable<Integer> {
  @Mixin private final BookOption book = new BookOption();

  @Parameters(paramLabel = "ARCHIVE", description = "The zip file to read.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private Path file;

  @Mixin private final HelpOption help = new HelpOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec spec;

  @Override
  public Integer call() {
    Manifest manifest = Keeping.restore(book.place(), file, InstantSource.system());
    return BookCounts.tell(spec, book.place().shown(), manifest);
  }
}
