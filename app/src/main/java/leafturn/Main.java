package leafturn;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import leafturn.advice.call.RoundOfLawns;
import leafturn.cli.DemoCommand;
import leafturn.cli.LeafturnCommand;
import leafturn.records.InputException;
import leafturn.web.CannotListenException;
import leafturn.web.LeafturnServer;

/** Builds the objects and runs one command. */
public final class Main {
  private Main() {}

  public static void main(String[] arguments) {
    PrintWriter out = utf8(FileDescriptor.out);
    PrintWriter err = utf8(FileDescriptor.err);
    DemoCommand demo = new DemoCommand(Main::serve);
    int exitCode = new LeafturnCommand(out, err, demo).run(arguments);
    if (exitCode != 0) {
      System.exit(exitCode);
    }
  }

  /** Serves until the process is stopped; the server's own threads keep it alive. */
  private static URI serve(RoundOfLawns round, int port) {
    try {
      return LeafturnServer.start(round, port).address();
    } catch (CannotListenException taken) {
      throw new InputException("The demo cannot be served: " + taken.getMessage() + ".");
    }
  }

  private static PrintWriter utf8(FileDescriptor descriptor) {
    return new PrintWriter(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
  }
}
