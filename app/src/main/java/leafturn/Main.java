package leafturn;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import leafturn.cli.LeafturnCommand;

/** Builds the objects and runs one command. */
public final class Main {
  private Main() {}

  public static void main(String[] arguments) {
    PrintWriter out = utf8(FileDescriptor.out);
    PrintWriter err = utf8(FileDescriptor.err);
    int exitCode = new LeafturnCommand(out, err).run(arguments);
    if (exitCode != 0) {
      System.exit(exitCode);
    }
  }

  private static PrintWriter utf8(FileDescriptor descriptor) {
    return new PrintWriter(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
  }
}
