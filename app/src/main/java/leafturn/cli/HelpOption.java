package leafturn.cli;

import picocli.CommandLine.Option;

/** The option every command has: mix it in with {@code @Mixin HelpOption help}. */
final class HelpOption {
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Shows this text.")
  private boolean asked;

  boolean asked() {
    return asked;
  }
}
