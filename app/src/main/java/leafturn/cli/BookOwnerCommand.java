package leafturn.cli;

import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.Callable;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.people.Owners;
import leafturn.records.people.Passwords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Gives a book an owner who can sign in, or an owner a new password. */
@Command(
    name = "owner",
    description = {
      "Gives a book an owner who can sign in, or an owner a new password.",
      "The password is asked for, or read as the first line of standard input.",
      ""
    },
    footer = {"", "Example: leafturn book owner --book garden-book --name \"Ada Lind\""})
final class BookOwnerCommand implements Callable<Integer> {
  @Mixin private final BookOption book = new BookOption();

  @Option(
      names = "--name",
      paramLabel = "NAME",
      required = true,
      description = "The name to sign in with.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private String name;

  @Mixin private final HelpOption help = new HelpOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec spec;

  @Override
  public Integer call() {
    BookPlace place = book.place();
    String password = password();
    Optional<String> fault = Passwords.fault(password, name);
    if (fault.isPresent()) {
      throw new InputException("The password cannot be taken: " + fault.get());
    }
    String hash = Passwords.hash(password);
    PrintWriter out = spec.commandLine().getOut();
    if (!Book.begun(place)) {
      out.println("There was no book at " + place.shown() + "; an empty one is begun.");
    }
    try (Book opened = Book.open(place, InstantSource.system())) {
      String kept = opened.write("the command line", w -> Owners.welcome(w, name, hash).name());
      out.println(Faults.quoted(kept) + " can now sign in as an owner of this book.");
    }
    return ExitCode.DONE;
  }

  private static String password() {
    Console console = System.console();
    if (console == null) {
      return firstLine();
    }
    String first = String.valueOf(console.readPassword("Password: "));
    String again = String.valueOf(console.readPassword("The same once more: "));
    if (!first.equals(again)) {
      throw new InputException("The two passwords are not the same; nothing was changed.");
    }
    return first;
  }

  private static String firstLine() {
    try {
      String line =
          new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)).readLine();
      return line == null ? "" : line;
    } catch (IOException e) {
      throw new UncheckedIOException("standard input cannot be read", e);
    }
  }
}
