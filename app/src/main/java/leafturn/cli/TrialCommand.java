package leafturn.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Side-by-side trials. */
@Command(
    name = "trial",
    description = {
      "Side-by-side trials: tells their size, lays them out, analyses and packs their results.",
      ""
    },
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {
      TrialSizeCommand.class,
      TrialLayCommand.class,
      TrialAnalyseCommand.class,
      TrialPackageCommand.class,
      TrialUnpackCommand.class
    })
final class TrialCommand implements Runnable {
  @Mixin private final HelpOption help = new HelpOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec spec;

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }
}
