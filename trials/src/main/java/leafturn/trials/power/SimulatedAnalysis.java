package leafturn.trials.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import leafturn.trials.analysis.TrialAnalysis;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.inference.Estimate;
import leafturn.trials.analysis.inference.MarginalTests;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.analysis.numeric.Tails;
import leafturn.trials.analysis.paired.PairedDifference;
import org.hipparchus.random.MersenneTwister;

/** Draws one trial and analyses it as it is planned. Serves several threads at once. */
final class SimulatedAnalysis {
  private final SimulationQuestion question;
  private final SizeQuestion size;
  private final SimulatedRows rows;
  private final SimulationQuestion.MixedAnalysis mixed;
  private final List<String> columns;
  private final List<List<String>> cells;
  private final List<Integer> lines;
  private final boolean onMeans;

  /** What one trial showed. */
  record Shown(boolean analysed, boolean difference, boolean equivalence) {
    static final Shown NOTHING = new Shown(false, false, false);
  }

  /**
   * @param truth the true difference
   */
  SimulatedAnalysis(SimulationQuestion question, double truth) {
    this.question = question;
    this.size = question.size();
    Design design = size.design();
    Integer units = Objects.requireNonNull(size.units());
    this.rows = SimulatedRows.of(design, units, truth, question.around());
    SimulationQuestion.MixedAnalysis own = question.analysis();
    this.onMeans = own == null;
    this.mixed = own == null ? UsualModel.of(size) : own;
    this.columns = new ArrayList<>(SimulatedRows.columns(design));
    columns.add(mixed.model().response());
    int step = onMeans ? design.sampling().dates() : 1;
    this.cells =
        IntStream.range(0, rows.cells().size())
            .filter(row -> row % step == 0)
            .mapToObj(row -> rows.cells().get(row))
            .toList();
    this.lines = IntStream.rangeClosed(2, cells.size() + 1).boxed().toList();
  }

  /** Whether the paired differences of split yards are what is analysed. */
  boolean isPaired() {
    return onMeans && size.design().layout() == Layout.SPLIT_YARD;
  }

  /** Whether the analysis can tell that a difference is within the margin. */
  boolean canShowEquivalence() {
    return size.margin() != null && (isPaired() || mixed.model().compare() != null);
  }

  /**
   * Trial number {@code trial} of the seed.
   *
   * @throws TrialFaultException where it cannot be analysed
   */
  Shown shown(int trial) {
    long seed = question.seed();
    MersenneTwister random =
        new MersenneTwister(new int[] {(int) (seed >>> 32), (int) seed, trial});
    double[] values = rows.draw(random);
    double[] analysed = onMeans ? means(values) : values;
    return isPaired() ? byPairs(analysed) : byModel(analysed);
  }

  private double[] means(double[] values) {
    int dates = size.design().sampling().dates();
    double[] means = new double[values.length / dates];
    for (int row = 0; row < values.length; row++) {
      means[row / dates] += values[row] / dates;
    }
    return means;
  }

  private Shown byPairs(double[] halves) {
    double[] differences = new double[halves.length / 2];
    for (int yard = 0; yard < differences.length; yard++) {
      differences[yard] = halves[2 * yard + 1] - halves[2 * yard];
    }
    PairedDifference pairs = PairedDifference.of(differences);
    double alpha = size.test().alpha();
    double p = size.test().sides() == 2 ? pairs.p() : Tails.tAbove(pairs.t(), pairs.df());
    Double margin = size.margin();
    boolean within = margin != null && pairs.equivalence(margin).p() < alpha;
    return new Shown(true, p < alpha, within);
  }

  private Shown byModel(double[] values) {
    TrialAnalysis analysis = TrialAnalysis.of(table(values), mixed.model());
    double alpha = size.test().alpha();
    if (mixed.byContrast()) {
      Estimate first = analysis.contrasts().get(0).estimate();
      return new Shown(true, first.p() < alpha, isWithin(analysis));
    }
    double p =
        analysis.tests().stream()
            .filter(test -> test.term().equals(mixed.term()))
            .mapToDouble(MarginalTests.Test::p)
            .findFirst()
            .orElse(Double.NaN);
    if (Double.isNaN(p)) {
      throw new TrialFaultException(
          "The model has no test of %s that these data can state.".formatted(mixed.term()));
    }
    return new Shown(true, p < alpha, isWithin(analysis));
  }

  private boolean isWithin(TrialAnalysis analysis) {
    Double margin = size.margin();
    if (margin == null || analysis.contrasts().isEmpty()) {
      return false;
    }
    Estimate first = analysis.contrasts().get(0).estimate();
    PairedDifference.Equivalence within =
        PairedDifference.Equivalence.of(first.value(), first.se(), first.df(), margin);
    return within.p() < size.test().alpha();
  }

  private TrialTable table(double[] values) {
    boolean exponentials = question.log() && !onMeans;
    boolean log = mixed.model().scale() == TrialModel.Scale.LOG;
    if (log != exponentials) {
      throw new TrialFaultException(
          "The model's scale and that of the outcome differ; both are log or both identity.");
    }
    List<List<String>> table = new ArrayList<>(cells.size());
    for (int row = 0; row < values.length; row++) {
      List<String> own = new ArrayList<>(cells.get(row));
      own.add(Double.toString(exponentials ? Math.exp(values[row]) : values[row]));
      table.add(own);
    }
    return new TrialTable(columns, table, lines);
  }
}
