package leafturn.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What keeps a book safe: archives, checks, backups and owners. */
@Command(
    name = "book",
    description = {
      "Writes a whole book to an open archive and reads it back, checks it and backs it up;",
      "makes owners who can sign in.",
      ""
    },
    synopsisSubcommandLabel = "COMMAND",
    commandListHeading = "%nCommands:%n",
    subcommands = {
      BookExportCommand.class,
      BookImportCommand.class,
      BookCheckCommand.class,
      BookBackupCommand.class,
      BookOwnerCommand.class
    },
    footer = {
      "",
      "Export, check and backup work while the book is being served, too.",
      "'leafturn book COMMAND --help' tells more of a command."
    })
final class BookCommand implements Runnable {
  @Mixin private final HelpOption help = new HelpOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec spec;

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }
}
