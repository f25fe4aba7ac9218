package leafturn.bench;

import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import leafturn.trials.analysis.model.DegreesOfFreedom;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.model.Term;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.power.Design;
import leafturn.trials.power.DifferenceTest;
import leafturn.trials.power.PlotVariance;
import leafturn.trials.power.Sampling;
import leafturn.trials.power.SimulatedPower;
import leafturn.trials.power.SimulationQuestion;
import leafturn.trials.power.SizeQuestion;
import leafturn.trials.power.Surroundings;
import leafturn.trials.power.TrialSimulation;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * 1,000 simulated split-yard trials (12 yards, 2 arms, 6 dates), each fitted by restricted maximum
 * likelihood and tested with Kenward and Roger's degrees of freedom.
 */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 1)
@Measurement(iterations = 5)
@State(Scope.Thread)
public class TrialPowerBench {
  private static final int TRIALS = 1000;

  /** Threads that share the trials. */
  @Param({"1", "2"})
  private int threads;

  private final SimulationQuestion question = question();

  private static SimulationQuestion question() {
    PlotVariance variance = new PlotVariance(0.02, 0.01, 0.5, 0.12, 0.004);
    Design design = Design.splitYards(variance, new Sampling(6, 15, 1, 1));
    DifferenceTest test = new DifferenceTest(0.05, 2, DifferenceTest.Rejections.BOTH_TAILS);
    SizeQuestion size =
        new SizeQuestion(design, null, test, false, 0.8, Math.log(1.2), null, 0, 12);
    TrialModel model =
        new TrialModel(
            "potassium",
            TrialModel.Scale.LOG,
            List.of("practice", "date"),
            List.of(),
            List.of(Term.of("practice"), Term.of("date"), Term.of("practice*date")),
            true,
            List.of(
                RandomTerm.mean("yard"),
                RandomTerm.mean("yard", "practice"),
                RandomTerm.mean("yard", "date")),
            null,
            DegreesOfFreedom.KENWARD_ROGER,
            null,
            Map.of());
    return new SimulationQuestion(
        size,
        new Surroundings(0.1, 0.01, 0, 0, 0, 0),
        true,
        new SimulationQuestion.MixedAnalysis(model, "practice", false),
        TRIALS,
        20260401);
  }

  /** Sees that threads do not matter and that every trial is analysed. */
  @Setup
  public void prepare() {
    SimulatedPower one = TrialSimulation.of(question, 1, done -> {});
    if (one.notAnalysed() > 0 || !one.equals(TrialSimulation.of(question, 2, done -> {}))) {
      throw new IllegalStateException("a trial was not analysed, or the answer depends on threads");
    }
  }

  /** All trials. */
  @Benchmark
  public SimulatedPower simulate() {
    return TrialSimulation.of(question, threads, done -> {});
  }
}
