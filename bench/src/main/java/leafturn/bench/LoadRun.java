package leafturn.bench;

import java.io.PrintStream;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import leafturn.bench.LoadVisitor.Page;

/**
 * Asks a server that runs for pages at a steady pace, whether or not it keeps up: {@code LoadRun
 * ADDRESS SECONDS REQUESTS_A_SECOND LAWNS [PROCESS]}. Times run from the moment a request is due to
 * the last byte of its answer.
 */
public final class LoadRun {
  private static final long SEED = 50;
  private static final int MOST_AT_ONCE = 64;
  private static final double LAWN_FRACTION = 0.6;
  private static final double ROUND_FRACTION = 0.3;

  private final LoadVisitor visitor;
  private final LoadFigures figures = new LoadFigures();
  private final Random random = new Random(SEED);
  private final int lawns;

  private LoadRun(URI address, int lawns) {
    this.visitor = new LoadVisitor(address);
    this.lawns = lawns;
  }

  /** Runs the load, prints the figures and ends with 1 where a request failed. */
  public static void main(String[] arguments) throws InterruptedException {
    LoadRun run = new LoadRun(URI.create(arguments[0]), Integer.parseInt(arguments[3]));
    int seconds = Integer.parseInt(arguments[1]);
    run.load(seconds, Integer.parseInt(arguments[2]));
    PrintStream out = System.out;
    out.println(
        "| page | requests | errors | unfinished | p50, ms | p95, ms | p99, ms | most, ms | kB |");
    out.println("|---|---|---|---|---|---|---|---|---|");
    run.figures.lines().forEach(out::println);
    run.figures.errors().forEach(out::println);
    if (arguments.length > 4) {
      out.println(ProcessMemory.of(Long.parseLong(arguments[4])).inWords());
    }
    System.exit(run.figures.failed() ? 1 : 0);
  }

  private void load(int seconds, int requestsASecond) throws InterruptedException {
    visitor.visit(Page.ROUND, ""); // so that all requests are one visitor's, with one cookie
    ExecutorService clients = Executors.newFixedThreadPool(MOST_AT_ONCE);
    long start = System.nanoTime();
    long pauseNanos = TimeUnit.SECONDS.toNanos(1) / requestsASecond;
    List<Page> pages = pages(seconds * requestsASecond);
    for (int i = 0; i < pages.size(); i++) {
      long dueNanos = start + i * pauseNanos;
      long waitNanos = dueNanos - System.nanoTime();
      if (waitNanos > 0) {
        TimeUnit.NANOSECONDS.sleep(waitNanos);
      }
      Page page = pages.get(i);
      String lawn = "lawn-" + (1 + random.nextInt(lawns));
      clients.execute(() -> figures.add(page, dueNanos, visitor.visit(page, lawn)));
    }
    clients.shutdown();
    if (!clients.awaitTermination(1, TimeUnit.MINUTES)) {
      throw new IllegalStateException("requests were still unanswered after a minute");
    }
  }

  private List<Page> pages(int count) {
    List<Page> pages = new ArrayList<>();
    while (pages.size() < count) {
      double drawn = random.nextDouble();
      if (drawn < LAWN_FRACTION) {
        pages.add(Page.LAWN);
      } else if (drawn < LAWN_FRACTION + ROUND_FRACTION) {
        pages.add(Page.ROUND);
      } else {
        // An entry is two requests: its form, and what is sent with it.
        pages.add(Page.LOG_FORM);
        pages.add(Page.LOG_ENTRY);
      }
    }
    return pages.subList(0, count);
  }
}
