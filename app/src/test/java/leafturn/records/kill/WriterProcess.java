package leafturn.records.kill;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import leafturn.records.book.Book;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;

/** A {@link DiligentWriter} in a process of its own, and what it was told. */
final class WriterProcess {
  private static final Duration LONGEST_START = Duration.ofMinutes(5);

  private final Process process;
  private final BufferedReader output;
  private final List<String> told = new ArrayList<>();

  /** An entry that the book acknowledged. */
  private record Acknowledged(int version, double waterMm) {}

  private WriterProcess(Process process) {
    this.process = process;
    this.output = process.inputReader(StandardCharsets.UTF_8);
  }

  /**
   * Starts one and waits until it begins to write.
   *
   * @param limit shell command that limits it, for instance {@code ulimit -f 100}, or "true"
   * @param more what else its main method is given
   */
  static WriterProcess start(String place, String lawn, long seed, String limit, String... more)
      throws IOException, InterruptedException {
    List<String> java =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-XX:-UsePerfData",
            "-Xshare:auto",
            "-cp",
            System.getProperty("java.class.path"),
            DiligentWriter.class.getName(),
            place,
            lawn,
            Long.toString(seed));
    List<String> command = new ArrayList<>(List.of("sh", "-c", limit + "; exec \"$@\"", "sh"));
    command.addAll(java);
    command.addAll(List.of(more));
    WriterProcess writer =
        new WriterProcess(
            new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start());
    String first = writer.firstLine();
    if (!DiligentWriter.READY.equals(first)) {
      writer.process.toHandle().destroyForcibly();
      throw new IllegalStateException("the writer did not begin, but said: " + first);
    }
    return writer;
  }

  /** The first line, waited for as long as a slow machine may need. */
  private String firstLine() throws IOException, InterruptedException {
    long end = System.nanoTime() + LONGEST_START.toNanos();
    while (!output.ready() && process.isAlive() && System.nanoTime() < end) {
      TimeUnit.MILLISECONDS.sleep(10);
    }
    return output.ready() ? output.readLine() : "nothing";
  }

  /** Kills it as {@code kill -9} does, and reads what it still had to say. */
  void kill() throws IOException, InterruptedException {
    process.toHandle().destroyForcibly(); // leaves what it wrote to be read
    await();
  }

  /** Waits until it ends by itself. */
  void await() throws IOException, InterruptedException {
    for (String line = output.readLine(); line != null; line = output.readLine()) {
      told.add(line);
    }
    if (!process.waitFor(30, TimeUnit.SECONDS)) {
      throw new IllegalStateException("the writer does not end");
    }
  }

  /** Waits until the book refuses an entry. */
  void awaitRefusal() throws IOException {
    while (refusal().isEmpty()) {
      told.add(output.readLine());
    }
  }

  /** Its number among the processes of this machine. */
  long id() {
    return process.pid();
  }

  /** Why the book refused an entry; empty where it did not. */
  String refusal() {
    return told.stream()
        .filter(line -> line.startsWith(DiligentWriter.REFUSED))
        .findFirst()
        .orElse("");
  }

  /** How others in the same process were answered. */
  List<String> answers() {
    return told.stream().filter(line -> line.startsWith(CrossedWriter.ANSWERED)).toList();
  }

  /** Number of entries and corrections that were acknowledged. */
  long acknowledgements() {
    return told.stream().filter(WriterProcess::isWhole).count();
  }

  /** What of the acknowledged is not in the book as it was acknowledged, or a later version. */
  List<String> missingIn(Book book) {
    List<String> missing = new ArrayList<>();
    Map<String, Acknowledged> last = new HashMap<>();
    told.stream()
        .filter(WriterProcess::isWhole)
        .map(line -> line.split(" "))
        .forEach(
            words ->
                last.put(
                    words[0],
                    new Acknowledged(Integer.parseInt(words[1]), Double.parseDouble(words[2]))));
    last.forEach(
        (id, entry) -> {
          List<Sheet<LogSheet>> history = book.read(reading -> reading.history(Kind.LOG, id));
          boolean there = history.stream().anyMatch(sheet -> is(sheet, entry));
          if (!there) {
            missing.add("entry " + id + " as acknowledged: " + entry + ", but there is " + history);
          }
        });
    return missing;
  }

  private static boolean is(Sheet<LogSheet> sheet, Acknowledged entry) {
    return sheet.version() == entry.version()
        && sheet.content().done() instanceof Done.Watered watered
        && watered.waterMm() == entry.waterMm();
  }

  /** A line that the kill cut short acknowledges nothing. */
  private static boolean isWhole(String line) {
    return line.matches("[0-9a-f-]{36} \\d+ \\d+\\.\\d");
  }
}
