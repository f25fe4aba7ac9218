package leafturn.records.round;

import java.util.Comparator;
import java.util.concurrent.PriorityBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;

/**
 * As many threads as the machine has processors; what somebody waits for comes first. The same work
 * may be asked for again more urgently.
 */
final class Workers implements AutoCloseable {
  /** Who waits for a call. */
  enum Urgency {
    /** Somebody who looks at this lawn. */
    ONE_LAWN,
    /** Somebody who looks at the round. */
    ROUND,
    /** Nobody yet. */
    AHEAD
  }

  /** Calls that are made at once. */
  static final int COUNT = Runtime.getRuntime().availableProcessors();

  private final AtomicLong asked = new AtomicLong();
  private final ThreadPoolExecutor threads;

  private record Request(CallWork work, Urgency urgency, long number) implements Runnable {
    @Override
    public void run() {
      work.run();
    }
  }

  Workers() {
    Comparator<Runnable> order =
        Comparator.comparing((Runnable request) -> ((Request) request).urgency())
            .thenComparing(request -> ((Request) request).number());
    threads =
        new ThreadPoolExecutor(
            COUNT,
            COUNT,
            1,
            TimeUnit.MINUTES,
            new PriorityBlockingQueue<>(64, order),
            Workers::thread);
    threads.allowCoreThreadTimeOut(true);
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "calls");
    thread.setDaemon(true);
    return thread;
  }

  /** Has work done that nobody has begun yet; returns at once. */
  void ask(CallWork work, Urgency urgency) {
    if (work.waiting()) {
      try {
        threads.execute(new Request(work, urgency, asked.incrementAndGet()));
      } catch (RejectedExecutionException closed) {
        work.outcome()
            .completeExceptionally(new IllegalStateException("the round is closed", closed));
      }
    }
  }

  /** Begins nothing more; whoever waits for what was not begun is told. */
  @Override
  public void close() {
    threads
        .shutdownNow()
        .forEach(
            request ->
                ((Request) request)
                    .work()
                    .outcome()
                    .completeExceptionally(new IllegalStateException("the round is closed")));
  }
}
