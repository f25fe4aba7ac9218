package leafturn.trials.power;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntConsumer;
import java.util.function.Predicate;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.power.SimulatedAnalysis.Shown;
import leafturn.trials.power.SimulatedPower.Share;
import org.hipparchus.exception.MathRuntimeException;

/**
 * Power by simulated trials: under the difference that is to be found, and under the one that
 * equivalence is to be shown under. Every trial has numbers of its own from the seed, so that the
 * answer does not depend on the number of threads.
 */
public final class TrialSimulation {
  private static final int TASK = 20;

  private final SimulationQuestion question;
  private final int threads;
  private final IntConsumer progress;
  private int notAnalysed;

  private TrialSimulation(SimulationQuestion question, int threads, IntConsumer progress) {
    this.question = question;
    this.threads = threads;
    this.progress = progress;
  }

  /**
   * Simulates and analyses trials.
   *
   * @param threads 1 or more
   * @param progress hears how many more trials are done, from several threads
   * @throws TrialFaultException where the first trial cannot be analysed, saying why
   */
  public static SimulatedPower of(SimulationQuestion question, int threads, IntConsumer progress) {
    return new TrialSimulation(question, threads, progress).power();
  }

  /** How many trials are analysed in all, for progress. */
  public static int analyses(SimulationQuestion question) {
    boolean both = question.size().difference() != null && question.size().margin() != null;
    return question.trials() * (both ? 2 : 1);
  }

  private SimulatedPower power() {
    SizeQuestion size = question.size();
    Double difference = size.difference();
    Share found =
        difference == null
            ? null
            : share(new SimulatedAnalysis(question, difference), Shown::difference);
    SimulatedAnalysis same = new SimulatedAnalysis(question, size.trueDifference());
    Share equivalent = same.canShowEquivalence() ? share(same, Shown::equivalence) : null;
    return new SimulatedPower(question.trials(), notAnalysed, found, equivalent);
  }

  private Share share(SimulatedAnalysis analysis, Predicate<Shown> counts) {
    analysis.shown(0);
    Shown[] all = all(analysis);
    notAnalysed += (int) Arrays.stream(all).filter(shown -> !shown.analysed()).count();
    return Share.of(Arrays.stream(all).filter(counts).count(), all.length);
  }

  private Shown[] all(SimulatedAnalysis analysis) {
    Shown[] all = new Shown[question.trials()];
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<?>> tasks = new ArrayList<>();
      for (int first = 0; first < all.length; first += TASK) {
        int from = first;
        int end = Math.min(all.length, first + TASK);
        tasks.add(pool.submit(() -> some(analysis, all, from, end)));
      }
      for (Future<?> task : tasks) {
        task.get();
      }
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new CancellationException("the simulation was stopped");
    } catch (ExecutionException failed) {
      throw new IllegalStateException("a simulated trial failed", failed);
    } finally {
      pool.shutdownNow();
    }
    return all;
  }

  private void some(SimulatedAnalysis analysis, Shown[] all, int from, int end) {
    for (int trial = from; trial < end; trial++) {
      try {
        all[trial] = analysis.shown(trial);
      } catch (TrialFaultException | MathRuntimeException failed) {
        all[trial] = Shown.NOTHING;
      }
    }
    progress.accept(end - from);
  }
}
