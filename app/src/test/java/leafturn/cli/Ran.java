package leafturn.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.Stream;

/** How a command ended, and what it printed. */
record Ran(int exitCode, String out, String err) {

  /** Runs the command line with these arguments. */
  static Ran of(String... arguments) {
    return run(new Object[0], arguments);
  }

  /** Runs the command line with arguments that begin with these and go on with more. */
  static Ran of(List<String> first, String... more) {
    return of(Stream.concat(first.stream(), Stream.of(more)).toArray(String[]::new));
  }

  /** Runs the command line with a further command of the caller's. */
  static Ran with(Object command, String... arguments) {
    return run(new Object[] {command}, arguments);
  }

  private static Ran run(Object[] commands, String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int exitCode =
        new LeafturnCommand(new PrintWriter(out), new PrintWriter(err), commands).run(arguments);
    return new Ran(exitCode, out.toString(), err.toString());
  }

  JsonNode json() throws JsonProcessingException {
    return new ObjectMapper().readTree(out);
  }

  /** What it printed, wherever its lines end. */
  String words() {
    return out.replaceAll("\\s+", " ");
  }
}
