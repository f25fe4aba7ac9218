import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Makes the archive of classes from which Java starts Leafturn faster: serves the demo, asks for two
 * of its pages, and has Java lay down the classes that this took.
 *
 * <p>{@code java scripts/ClassArchive.java FOLDER}, the folder being the unpacked distribution.
 */
final class ClassArchive {
  private static final Pattern ADDRESS = Pattern.compile("(http://\\S+?)/? in a browser");
  private static final Pattern LAWN = Pattern.compile("href=\"(/lawns/[^\"?#]+)\"");

  private final Path libraries;

  private ClassArchive(Path libraries) {
    this.libraries = libraries;
  }

  public static void main(String[] arguments) throws IOException, InterruptedException {
    ClassArchive archive = new ClassArchive(Path.of(arguments[0], "lib").toAbsolutePath());
    Path classes = archive.libraries.resolve("classes.lst");
    archive.listClasses(classes);
    archive.layDown(classes);
  }

  /** Lists the classes that the demo has loaded when it has shown two pages. */
  private void listClasses(Path classes) throws IOException, InterruptedException {
    ProcessBuilder demo =
        new ProcessBuilder(
            libraries.resolveSibling("bin/leafturn").toString(), "demo", "--port", "0");
    // The launcher parts its options at spaces, so the file is named from the folder it is in.
    demo.directory(libraries.toFile());
    demo.environment()
        .put("LEAFTURN_JAVA_OPTIONS", "-XX:DumpLoadedClassList=" + classes.getFileName());
    Process server = demo.redirectErrorStream(true).start();
    try (BufferedReader told =
        new BufferedReader(
            new InputStreamReader(server.getInputStream(), StandardCharsets.UTF_8))) {
      String site = address(told);
      page(site + found(LAWN, page(site + "/")));
      server.toHandle().destroy(); // Process.destroy would close what is read below
      while (told.readLine() != null) {} // a full pipe would keep it from ending
      server.waitFor();
    } finally {
      server.destroyForcibly();
    }
    // Java 17.0.15 crashes over the lambdas of such a list, so it gets the classes alone.
    List<String> named =
        Files.readAllLines(classes).stream().filter(line -> !line.startsWith("@")).toList();
    Files.write(classes, named);
  }

  private void layDown(Path classes) throws IOException, InterruptedException {
    Path fresh = libraries.resolve("classes.jsa.new");
    Process dump =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:dump",
                "-XX:+UseSerialGC",
                "-XX:SharedClassListFile=" + classes,
                "-XX:SharedArchiveFile=" + fresh,
                "-cp",
                libraries.resolve("leafturn.jar").toString())
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    if (dump.waitFor() != 0) {
      throw new IOException("Java laid no classes down, and ended with " + dump.exitValue());
    }
    Files.move(fresh, libraries.resolve("classes.jsa"), StandardCopyOption.REPLACE_EXISTING);
  }

  private static String address(BufferedReader told) throws IOException {
    StringBuilder heard = new StringBuilder();
    for (String line = told.readLine(); line != null; line = told.readLine()) {
      if (ADDRESS.matcher(line).find()) {
        return found(ADDRESS, line);
      }
      heard.append(line).append('\n');
    }
    throw new IOException("the demo told no address: " + heard);
  }

  private static String page(String address) throws IOException {
    try (InputStream in = URI.create(address).toURL().openStream()) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static String found(Pattern sought, String text) throws IOException {
    Matcher match = sought.matcher(text);
    if (!match.find()) {
      throw new IOException("no " + sought + " in what the demo shows");
    }
    return match.group(1);
  }
}
