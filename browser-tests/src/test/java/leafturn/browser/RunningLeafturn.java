package leafturn.browser;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The built distribution serving: the one place that says what is under test. */
record RunningLeafturn(URI address, Process process) implements AutoCloseable {
  private static final Path BUILT = Path.of("..", "app", "target");
  private static final int LONGEST_RUN_MIN = 5;
  private static final Pattern ADDRESS = Pattern.compile("https?://[^ ]+/");

  static RunningLeafturn start() throws IOException {
    return start("demo", "--port", "0");
  }

  /** Runs a command that serves. */
  static RunningLeafturn start(String... arguments) throws IOException {
    List<String> words = new ArrayList<>(List.of(command().toString()));
    words.addAll(List.of(arguments));
    Process process =
        new ProcessBuilder(words).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    BufferedReader output = process.inputReader();
    String line = output.readLine();
    Matcher address = ADDRESS.matcher(line == null ? "" : line);
    if (!address.find()) {
      process.destroy();
      throw new IllegalStateException("it told no address, but: " + line);
    }
    return new RunningLeafturn(URI.create(address.group()), process);
  }

  /** Runs a command that ends by itself, and tells its exit code. */
  static int run(String... arguments) throws IOException, InterruptedException {
    List<String> words = new ArrayList<>(List.of(command().toString()));
    words.addAll(List.of(arguments));
    Process process = new ProcessBuilder(words).inheritIO().start();
    if (!process.waitFor(LONGEST_RUN_MIN, TimeUnit.MINUTES)) {
      process.destroyForcibly();
    }
    return process.waitFor();
  }

  /** Runs a command that ends by itself on a machine of a language, and tells what it wrote. */
  static String output(Locale language, String... arguments) throws IOException {
    List<String> words = new ArrayList<>(List.of(command().toString()));
    words.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(words);
    builder
        .environment()
        .put(
            "LEAFTURN_JAVA_OPTIONS",
            "-Duser.language=%s -Duser.country=%s"
                .formatted(language.getLanguage(), language.getCountry()));
    Process process = builder.redirectError(ProcessBuilder.Redirect.INHERIT).start();
    return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
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
