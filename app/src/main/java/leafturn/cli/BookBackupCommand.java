package leafturn.cli;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.concurrent.Callable;
import leafturn.records.archive.Keeping;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes an archive under a name with the time. */
@Command(
    name = "backup",
    description = {
      "Writes an archive named by date and time, while the book is in use or not, and reads it",
      "back to see that it is whole.",
      ""
    },
    footer = {"", "Example: leafturn book backup --book garden-book backups"})
final class BookBackupCommand implements Callable<Integer> {
  @Mixin private final BookOption book = new BookOption();

  @Parameters(
      paramLabel = "PLACE",
      description = "A folder for backups, or the name of a .zip file that is not there yet.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private Path to;

  @Mixin private final HelpOption help = new HelpOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec spec;

  @Override
  public Integer call() {
    Keeping.Backup backup = Keeping.backUp(book.place(), to, InstantSource.system());
    return BookCounts.tell(spec, backup.file().toString(), backup.manifest());
  }
}
