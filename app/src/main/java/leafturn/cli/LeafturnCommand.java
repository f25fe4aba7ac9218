package leafturn.cli;

import java.io.PrintWriter;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import leafturn.records.Dates;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.NearestName;
import leafturn.records.ProgramVersion;
import leafturn.records.book.BookUnavailableException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * The command {@code leafturn}: parses arguments, runs one command and turns every failure into
 * sentences and an exit code. Results go to one writer, messages to the other.
 */
public final class LeafturnCommand {
  private static final String HELP_HINT = "'%s --help' tells what it takes.";

  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,12}(\\.\\d{1,12})?");
  private static final Pattern WHOLE_NUMBER = Pattern.compile("[+-]?\\d+");

  private static final List<Class<?>> OWN =
      List.of(
          CallCommand.class,
          PlanCommand.class,
          SeasonCommand.class,
          WeatherCommand.class,
          SourcesCommand.class,
          ValidateCommand.class,
          TrialCommand.class,
          BookCommand.class);

  private final PrintWriter out;
  private final PrintWriter err;
  private final List<Object> commands;

  /**
   * @param out where results go
   * @param err where messages go
   * @param more commands that need what only the caller can give, for instance a server
   */
  public LeafturnCommand(PrintWriter out, PrintWriter err, Object... more) {
    this.out = out;
    this.err = err;
    this.commands = Stream.concat(OWN.stream(), Stream.of(more)).toList();
  }

  /** Takes in the one command that is asked for, since each costs time; all where none is. */
  private CommandLine commandsFor(String... arguments) {
    List<Object> asked =
        commands.stream()
            .filter(command -> arguments.length > 0 && name(command).equals(arguments[0]))
            .toList();
    CommandLine line = new CommandLine(new Top());
    (asked.isEmpty() ? commands : asked).forEach(line::addSubcommand);
    line.registerConverter(Double.class, LeafturnCommand::number);
    line.registerConverter(double.class, LeafturnCommand::number);
    line.registerConverter(Integer.class, LeafturnCommand::wholeNumber);
    line.registerConverter(int.class, LeafturnCommand::wholeNumber);
    line.registerConverter(long.class, LeafturnCommand::longNumber);
    line.registerConverter(LocalDate.class, LeafturnCommand::date);
    line.registerConverter(ZoneId.class, LeafturnCommand::timeZone);
    line.setOut(out).setErr(err);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setParameterExceptionHandler((wrong, ignored) -> wrongArguments(wrong));
    line.setExecutionExceptionHandler((failure, command, parsed) -> failed(failure));
    return line;
  }

  private static String name(Object command) {
    Class<?> type = command instanceof Class<?> own ? own : command.getClass();
    return type.getAnnotation(Command.class).name();
  }

  /** A number of an option; a thing that is none is a fault. */
  static double number(String text) {
    if (!NUMBER.matcher(text).matches()) {
      throw new TypeConversionException(Faults.quoted(text) + " is not a number");
    }
    return Double.parseDouble(text);
  }

  private static int wholeNumber(String text) {
    if (!WHOLE_NUMBER.matcher(text).matches()) {
      throw new TypeConversionException(Faults.quoted(text) + " is not a whole number");
    }
    try {
      return Integer.parseInt(text);
    } catch (NumberFormatException e) {
      throw new TypeConversionException(
          "%s is too far from 0; give a number from %d to %d"
              .formatted(Faults.quoted(text), Integer.MIN_VALUE, Integer.MAX_VALUE));
    }
  }

  private static long longNumber(String text) {
    try {
      return Long.parseLong(text);
    } catch (NumberFormatException e) {
      throw new TypeConversionException(Faults.quoted(text) + " is not a whole number");
    }
  }

  private static LocalDate date(String text) {
    LocalDate date = Dates.parse(text);
    if (date == null) {
      throw new TypeConversionException(Dates.fault(text));
    }
    return date;
  }

  private static ZoneId timeZone(String text) {
    try {
      return ZoneId.of(text);
    } catch (DateTimeException e) {
      throw new TypeConversionException(
          Faults.quoted(text) + " is not a time zone; give an IANA name such as Europe/Paris");
    }
  }

  /** Runs one command and returns its exit code. */
  @SuppressWarnings("CatchAndPrintStackTrace") // the trace goes nowhere: one sentence is printed
  public int run(String... arguments) {
    try {
      return commandsFor(arguments).execute(arguments);
    } catch (OutOfMemoryError e) {
      err.println(
          "There is not enough memory for this; give Java more with LEAFTURN_JAVA_OPTIONS=-Xmx4g.");
      return ExitCode.PROGRAM_FAILED;
    } catch (StackOverflowError e) {
      return failed(new IllegalStateException("too deep", e));
    } finally {
      out.flush();
      err.flush();
    }
  }

  private int failed(Exception failure) {
    if (failure instanceof InputException input) {
      input.faults().forEach(err::println);
      return ExitCode.WRONG_INPUT;
    }
    if (failure instanceof BookUnavailableException) {
      err.println(failure.getMessage());
      return ExitCode.WRONG_INPUT;
    }
    String reason = failure.getMessage();
    err.println(
        "Leafturn failed (%s%s); this is a fault of the program, please report it with the command."
            .formatted(
                failure.getClass().getSimpleName(),
                reason == null ? "" : ": " + reason.lines().findFirst().orElse("")));
    return ExitCode.PROGRAM_FAILED;
  }

  private int wrongArguments(ParameterException wrong) {
    CommandLine command = wrong.getCommandLine();
    String name = command.getCommandSpec().qualifiedName();
    err.println(sentence(wrong, command) + " " + HELP_HINT.formatted(name));
    return ExitCode.WRONG_INPUT;
  }

  private static String sentence(ParameterException wrong, CommandLine command) {
    if (wrong instanceof UnmatchedArgumentException unmatched
        && !unmatched.getUnmatched().isEmpty()) {
      return unmatched(unmatched.getUnmatched().get(0), command);
    }
    if (wrong instanceof MissingParameterException missing) {
      return "%s is missing."
          .formatted(
              missing.getMissing().stream()
                  .map(LeafturnCommand::label)
                  .findFirst()
                  .orElse("An argument"));
    }
    String message =
        String.valueOf(wrong.getMessage())
            .lines()
            .findFirst()
            .orElse("")
            .replace("option option", "option");
    return message.endsWith(".") ? message : message + ".";
  }

  private static String label(CommandLine.Model.ArgSpec argument) {
    return argument instanceof CommandLine.Model.OptionSpec option
        ? option.longestName()
        : argument.paramLabel();
  }

  private static String unmatched(String argument, CommandLine command) {
    boolean option = argument.startsWith("-");
    boolean top = command.getParent() == null;
    Collection<String> valid =
        option
            ? command.getCommandSpec().optionsMap().keySet()
            : new ArrayList<>(command.getSubcommands().keySet());
    String kind = option ? "option" : top ? "command" : "argument";
    String near =
        NearestName.of(argument, valid).map(name -> "; did you mean " + name + "?").orElse(".");
    return "'%s' has no %s '%s'%s"
        .formatted(command.getCommandSpec().qualifiedName(), kind, argument, near);
  }

  @Command(
      name = "leafturn",
      mixinStandardHelpOptions = true,
      versionProvider = Version.class,
      description = {
        "Return or collect the clippings? The lawn by the day, and advice for each mowing.",
        ""
      },
      synopsisSubcommandLabel = "COMMAND",
      commandListHeading = "%nCommands:%n",
      footer = {
        "",
        "Results go to standard output, messages to standard error.",
        "Exit code: 0 done, 1 the answer is no, 2 the input was wrong, 3 Leafturn failed.",
        "'leafturn COMMAND --help' tells more of a command."
      })
  static final class Top implements Runnable {
    @CommandLine.Spec
    @SuppressWarnings("NullAway.Init")
    private CommandLine.Model.CommandSpec spec;

    @Override
    public void run() {
      spec.commandLine().usage(spec.commandLine().getOut());
    }
  }

  /** The version that the build wrote into the program. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {ProgramVersion.name()};
    }
  }
}
