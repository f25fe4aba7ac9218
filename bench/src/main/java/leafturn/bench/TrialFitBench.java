package leafturn.bench;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import leafturn.bench.TrialData.Task;
import leafturn.trials.analysis.inference.KenwardRoger;
import leafturn.trials.analysis.inference.MarginalTests;
import leafturn.trials.analysis.inference.Satterthwaite;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.analysis.mixed.MixedModel;
import org.jspecify.annotations.Nullable;

/**
 * Fits and tests of trials in a warm loop: {@code TrialFitBench REFERENCE WORK}, the folder of the
 * reference cases and one for files that other programs then read. Prints the median processor time
 * of each task in ms (a thousand seasons: elapsed time on two threads) and what it found.
 */
public final class TrialFitBench {
  private static final long WARM_NANOS = 4_000_000_000L;
  private static final String TWO_WAY = "\"fixed\": [\"trt\", \"date\", \"trt*date\"]";

  private final PrintStream out;

  private TrialFitBench(PrintStream out) {
    this.out = out;
  }

  /** Writes the files, then measures every task. */
  public static void main(String[] arguments) throws InterruptedException, ExecutionException {
    Path reference = Path.of(arguments[0]);
    Path work = Path.of(arguments[1]);
    Path season = reference.resolve("speed_synthetic/data.csv");
    TrialData.writeMeans(season, work.resolve("means.csv"));
    TrialData.writeCrossed(work.resolve("crossed.csv"));
    TrialFitBench bench = new TrialFitBench(System.out);
    bench.fit("splitPlot72", 200, Task.of(reference.resolve("oats_splitplot/data.csv"), OATS));
    bench.fit("slopes180", 200, Task.of(reference.resolve("sleepstudy/data.csv"), SLOPES));
    bench.fit("season2880", 60, Task.of(season, season("\"date\"")));
    Task means = Task.of(work.resolve("means.csv"), season(null));
    bench.fit("means960", 60, means);
    bench.kenwardRoger("kenwardRoger960", 60, means);
    bench.seasons();
    bench.crossed(Task.of(work.resolve("crossed.csv"), CROSSED));
  }

  private static final String OATS =
      """
      {"response": "yield", "factors": ["Variety", "nitro"],
       "fixed": ["Variety", "nitro", "Variety*nitro"],
       "random": [{"within": ["Block"]}, {"within": ["Block", "Variety"]}]}
      """;

  private static final String SLOPES =
      """
      {"response": "Reaction", "covariates": ["Days"], "fixed": ["Days"],
       "random": [{"within": ["Subject"], "slopes": ["Days"]}]}
      """;

  private static final String SPLIT_YARDS =
      """
      {"response": "value", "factors": ["practice", "date"],
       "fixed": ["practice", "date", "practice*date"],
       "random": [{"within": ["yard"]}, {"within": ["yard", "practice"]},
                  {"within": ["yard", "date"]}]}
      """;

  private static final String CROSSED =
      """
      {"response": "rating", "factors": ["practice"], "fixed": ["practice"],
       "random": [{"within": ["rater"]}, {"within": ["yard"]}, {"within": ["week"]}],
       "df": "satterthwaite"}
      """;

  /** The model of the season, with a random term of plots on dates where there are subsamples. */
  private static String season(@Nullable String subsampled) {
    String plots = subsampled == null ? "" : ", {\"within\": [\"yard\", \"trt\", \"date\"]}";
    return "{\"response\": \"logK\", \"factors\": [\"trt\", \"date\"], "
        + TWO_WAY
        + ", \"random\": [{\"within\": [\"yard\"]}, {\"within\": [\"yard\", \"trt\"]}, "
        + "{\"within\": [\"yard\", \"date\"]}"
        + plots
        + "]}";
  }

  /** Processor time of this thread, which other work on the machine disturbs least. */
  private static long now() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private void fit(String name, int runs, Task task) {
    long end = now() + WARM_NANOS;
    while (now() < end) {
      MixedModel.fit(task.model(), task.frame());
    }
    double[] nanos = new double[runs];
    double logLikelihood = 0;
    for (int run = 0; run < runs; run++) {
      long start = now();
      MixedFit fit = MixedModel.fit(task.model(), task.frame());
      nanos[run] = now() - start;
      logLikelihood = fit.logLikelihood();
    }
    print(name, nanos, logLikelihood);
  }

  private void kenwardRoger(String name, int runs, Task task) {
    double[] nanos = new double[runs];
    double f = 0;
    for (int run = -runs; run < runs; run++) {
      MixedFit fit = MixedModel.fit(task.model(), task.frame());
      long start = now();
      f = new MarginalTests(fit).all(new KenwardRoger(fit)).get(2).f();
      if (run >= 0) {
        nanos[run] = now() - start;
      }
    }
    print(name, nanos, f);
  }

  /** A thousand simulated seasons from text to tests, on two threads. */
  private void seasons() throws InterruptedException, ExecutionException {
    int seasons = 1000;
    ExecutorService threads = Executors.newFixedThreadPool(2);
    for (int round = 0; round < 2; round++) {
      long start = System.nanoTime();
      List<Future<Integer>> found = new ArrayList<>();
      for (int season = 0; season < seasons; season++) {
        int seed = season;
        found.add(threads.submit(() -> significant(seed)));
      }
      int significant = 0;
      for (Future<Integer> one : found) {
        significant += one.get();
      }
      if (round == 1) {
        print("seasons1000", new double[] {System.nanoTime() - start}, significant);
      }
    }
    threads.shutdown();
  }

  private static int significant(long seed) {
    Task task = Task.of(TrialData.splitYards(seed), SPLIT_YARDS);
    MixedFit fit = MixedModel.fit(task.model(), task.frame());
    return new MarginalTests(fit).all(new KenwardRoger(fit)).get(0).p() < 0.05 ? 1 : 0;
  }

  private void crossed(Task task) {
    double[] nanos = new double[5];
    double logLikelihood = 0;
    for (int run = -1; run < nanos.length; run++) {
      long start = now();
      MixedFit fit = MixedModel.fit(task.model(), task.frame());
      if (run >= 0) {
        nanos[run] = now() - start;
      }
      logLikelihood = fit.logLikelihood();
    }
    print("crossed70000", nanos, logLikelihood);
    MixedFit fit = MixedModel.fit(task.model(), task.frame());
    long start = now();
    double f = new MarginalTests(fit).all(new Satterthwaite(fit)).get(0).f();
    print("satterthwaite70000", new double[] {now() - start}, f);
    double most = ProcessMemory.of(ProcessHandle.current().pid()).mostResidentMb();
    out.printf("memory,%.0f,0%n", most);
  }

  private void print(String name, double[] nanos, double result) {
    Arrays.sort(nanos);
    out.printf("%s,%s,%.6f%n", name, TrialData.inMs(nanos[nanos.length / 2]), result);
  }
}
