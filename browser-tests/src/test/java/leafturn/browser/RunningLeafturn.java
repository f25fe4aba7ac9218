package leafturn.browser;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The built distribution serving its demo: the one place that says what is under test. */
record RunningLeafturn(URI address, Process process) implements AutoCloseable {
  private static final Path BUILT = Path.of("..", "app", "target");
  private static final Pattern ADDRESS = Pattern.compile("http://[^ ]+/");

  static RunningLeafturn start() throws IOException {
    Process process =
        new ProcessBuilder(command().toString(), "demo", "--port", "0")
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    BufferedReader output = process.inputReader();
    String line = output.readLine();
    Matcher address = ADDRESS.matcher(line == null ? "" : line);
    if (!address.find()) {
      process.destroy();
      throw new IllegalStateException("the demo told no address, but: " + line);
    }
    return new RunningLeafturn(URI.create(address.group()), process);
  }

  private static Path command() throws IOException {
    try (Stream<Path> built = Files.list(BUILT)) {
      return built
          .map(folder -> folder.resolve("bin").resolve("leafturn"))
          .filter(Files::isExecutable)
          .max(Comparator.comparing(command -> command.toFile().lastModified()))
          .orElseThrow(
              () ->
                  new IllegalStateException(
                      "there is no distribution under app/target: run mvn package first"));
    }
  }

  String url(String path) {
    return address.resolve(path).toString();
  }

  @Override
  public void close() throws InterruptedException {
    process.destroy();
    if (!process.waitFor(10, TimeUnit.SECONDS)) {
      process.destroyForcibly();
    }
  }
}
