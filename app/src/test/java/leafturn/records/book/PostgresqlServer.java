package leafturn.records.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A real PostgreSQL server for tests, from the programs installed on this machine, with its data in
 * a folder of its own; started once and stopped with the test process.
 */
public final class PostgresqlServer {
  private static final boolean ROOT = "root".equals(System.getProperty("user.name"));
  private static int databases;

  private final Path programs;
  private final Path data;
  private final int port;

  private PostgresqlServer(Path programs, Path data, int port) {
    this.programs = programs;
    this.data = data;
    this.port = port;
  }

  /** The server of this test process, running. */
  public static PostgresqlServer running() {
    return Holder.SERVER;
  }

  private static final class Holder {
    static final PostgresqlServer SERVER = begin();
  }

  /** The JDBC URL of a new, empty database. */
  public synchronized String newDatabase() {
    String name = "book" + ++databases;
    try (Connection connection = DriverManager.getConnection(url("postgres"));
        Statement statement = connection.createStatement()) {
      statement.execute("create database " + name);
      return url(name);
    } catch (SQLException e) {
      throw new IllegalStateException("no database could be made for the test", e);
    }
  }

  /** Stops the server at once, as a power cut would, leaving its data. */
  public void crash() {
    run("pg_ctl", "-D", data.toString(), "-m", "immediate", "-w", "stop");
  }

  /** Starts it, again after {@link #crash}. */
  public void start() {
    run(
        "pg_ctl",
        "-D",
        data.toString(),
        "-w",
        "-l",
        data.resolve("server.log").toString(),
        "-o",
        "-h 127.0.0.1 -p %d -k %s".formatted(port, data),
        "start");
  }

  private String url(String database) {
    return "jdbc:postgresql://127.0.0.1:%d/%s?user=leafturn".formatted(port, database);
  }

  private static PostgresqlServer begin() {
    try (ServerSocket free = new ServerSocket(0)) {
      Path data = Files.createTempDirectory("leafturn-postgresql");
      PostgresqlServer server = new PostgresqlServer(programs(), data, free.getLocalPort());
      if (ROOT) {
        // The server refuses to run as root.
        server.command(List.of("chown", "postgres", data.toString()));
      }
      server.run(
          "initdb", "-D", data.toString(), "-U", "leafturn", "-A", "trust", "-N", "-E", "UTF8");
      free.close();
      server.start();
      Runtime.getRuntime().addShutdownHook(new Thread(server::end));
      return server;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void end() {
    run("pg_ctl", "-D", data.toString(), "-m", "immediate", "-w", "stop");
    command(List.of("rm", "-rf", data.toString()));
  }

  private static Path programs() throws IOException {
    Path debian = Path.of("/usr/lib/postgresql");
    if (Files.isDirectory(debian)) {
      try (Stream<Path> versions = Files.list(debian)) {
        List<Path> found =
            versions
                .map(version -> version.resolve("bin"))
                .filter(bin -> Files.isExecutable(bin.resolve("initdb")))
                .sorted()
                .toList();
        if (!found.isEmpty()) {
          return found.get(found.size() - 1);
        }
      }
    }
    for (String folder : System.getenv("PATH").split(":", -1)) {
      if (Files.isExecutable(Path.of(folder, "initdb"))) {
        return Path.of(folder);
      }
    }
    throw new IllegalStateException(
        "the store's tests need a PostgreSQL server (on Debian: apt-get install postgresql)");
  }

  private void run(String program, String... arguments) {
    List<String> command = new ArrayList<>();
    if (ROOT) {
      command.addAll(List.of("runuser", "-u", "postgres", "--"));
    }
    command.add(programs.resolve(program).toString());
    command.addAll(List.of(arguments));
    command(command);
  }

  private void command(List<String> command) {
    try {
      Path output = Files.createTempFile("leafturn-postgresql", ".log");
      Process process =
          new ProcessBuilder(command)
              .directory(new java.io.File("/"))
              .redirectErrorStream(true)
              .redirectOutput(output.toFile())
              .start();
      boolean ended = process.waitFor(60, TimeUnit.SECONDS);
      String said = Files.readString(output);
      Files.delete(output);
      if (!ended || process.exitValue() != 0) {
        throw new IllegalStateException(command + " failed: " + said);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while running " + command, e);
    }
  }
}
