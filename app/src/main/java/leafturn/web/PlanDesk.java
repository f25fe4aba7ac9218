package leafturn.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * The season plans of a book: made one after the other beside the pages, the last one of each lawn
 * kept in memory.
 */
final class PlanDesk implements AutoCloseable {
  /** Plans that may wait; whoever comes then is asked to come again. */
  private static final int MOST_WAITING = 8;

  private static final int MOST_KEPT = 64;

  private final ThreadPoolExecutor worker =
      new ThreadPoolExecutor(
          1,
          1,
          0,
          TimeUnit.SECONDS,
          new ArrayBlockingQueue<>(MOST_WAITING),
          task -> {
            Thread thread = new Thread(task, "season plan");
            thread.setDaemon(true);
            thread.setPriority(Thread.MIN_PRIORITY);
            return thread;
          });

  private final Map<String, PlanJob> kept =
      new LinkedHashMap<>(MOST_KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, PlanJob> eldest) {
          return size() > MOST_KEPT && eldest.getValue().state().ended();
        }
      };

  /** The last plan of a lawn, ended or not. */
  synchronized Optional<PlanJob> of(String lawn) {
    return Optional.ofNullable(kept.get(lawn));
  }

  /**
   * Has a plan made. One that is under way for the same lawn goes on instead.
   *
   * @return false when too many wait
   */
  synchronized boolean ask(String lawn, PlanJob job) {
    PlanJob before = kept.get(lawn);
    if (before != null && !before.state().ended()) {
      return true;
    }
    if (before != null) {
      job.keep(before.made());
    }
    try {
      worker.execute(job);
    } catch (RejectedExecutionException full) {
      return false;
    }
    kept.put(lawn, job);
    return true;
  }

  /** Stops what is under way; nothing is asked any more. */
  @Override
  public synchronized void close() {
    kept.values().forEach(PlanJob::stop);
    worker.shutdownNow();
  }
}
