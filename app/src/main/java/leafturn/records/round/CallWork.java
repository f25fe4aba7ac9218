package leafturn.records.round;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;

/** The making of one call: done once, by whichever worker comes to it first. */
final class CallWork implements Runnable {
  private final Supplier<LawnOutcome> making;
  private final AtomicBoolean begun = new AtomicBoolean();
  private final CompletableFuture<LawnOutcome> outcome = new CompletableFuture<>();

  CallWork(Supplier<LawnOutcome> making) {
    this.making = making;
  }

  /** What comes of it. */
  CompletableFuture<LawnOutcome> outcome() {
    return outcome;
  }

  /** True as long as nobody has begun it. */
  boolean waiting() {
    return !begun.get();
  }

  @Override
  public void run() {
    if (begun.compareAndSet(false, true)) {
      try {
        outcome.complete(making.get());
      } catch (RuntimeException | Error failure) {
        outcome.completeExceptionally(failure);
      }
    }
  }
}
