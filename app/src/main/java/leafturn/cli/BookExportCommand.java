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

/** Writes a book to an archive. */
@Command(
    name = "export",
    description = {
      "Writes the whole book, with all earlier versions, to a zip file of JSON, CSV and GeoJSON.",
      "Passwords and other secrets stay behind. Of a damaged book all that is whole is written,",
      "with the raw text of what is not; then the exit code is 1.",
      ""
    },
    footer = {"", "Example: leafturn book export --book garden-book book.zip"})
final class BookExportCommand implements Callable<Integer> {
  @Mixin private final BookOption book = new BookOption();

  @Parameters(
      paramLabel = "ARCHIVE",
      description = "The zip file to write; it must not be there yet.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private Path file;

  @Mixin private final HelpOption help = new HelpOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec spec;

  @Override
  public Integer call() {
    Manifest manifest = Keeping.export(book.place(), file, InstantSource.system());
    return BookCounts.tell(spec, file.toString(), manifest);
  }
}
