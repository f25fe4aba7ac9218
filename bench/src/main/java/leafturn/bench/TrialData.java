package leafturn.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import leafturn.records.SourceText;
import leafturn.records.trial.TrialDataFile;
import leafturn.records.trial.TrialModelFile;
import leafturn.trials.analysis.data.ModelFrame;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.model.TrialModel;

/** The data sets of the measurement of trials, written to files that others read too. */
final class TrialData {
  private static final long SEED = 20261129;

  private TrialData() {}

  /** A model with the observations it is fitted to. */
  record Task(TrialModel model, ModelFrame frame) {
    static Task of(Path data, String model) {
      return of(TrialDataFile.read(data), model);
    }

    static Task of(TrialTable table, String model) {
      TrialModel read = TrialModelFile.read(new SourceText("model", model));
      return new Task(read, ModelFrame.of(table, read));
    }
  }

  /** 70,000 ratings: 3,000 raters, 1,100 yards and 28 weeks met at random, two practices. */
  static void writeCrossed(Path file) {
    Random random = new Random(SEED);
    double[] raters = effects(random, 3000, 0.33);
    double[] yards = effects(random, 1100, 0.5);
    double[] weeks = effects(random, 28, 0.12);
    StringBuilder text = new StringBuilder("rater,yard,week,practice,rating\n");
    for (int row = 0; row < 70_000; row++) {
      int rater = row < 3000 ? row : random.nextInt(3000);
      int yard = row < 1100 ? row : random.nextInt(1100);
      int week = row < 28 ? row : random.nextInt(28);
      boolean returned = random.nextBoolean();
      double rating = 6 + raters[rater] + yards[yard] + weeks[week] + (returned ? 0.05 : 0);
      rating += 1.18 * random.nextGaussian();
      String practice = returned ? "returned" : "collected";
      String line = "r%d,y%d,w%d,%s,%.4f\n";
      text.append(String.format(Locale.ROOT, line, rater, yard, week, practice, rating));
    }
    write(file, text.toString());
  }

  private static double[] effects(Random random, int count, double sd) {
    double[] effects = new double[count];
    for (int i = 0; i < count; i++) {
      effects[i] = sd * random.nextGaussian();
    }
    return effects;
  }

  /** The means of the subsamples of each plot and date of the 2,880 rows. */
  static void writeMeans(Path from, Path to) {
    TrialTable table = TrialDataFile.read(from);
    String[] values = table.cells("logK");
    String[] yards = table.cells("yard");
    String[] halves = table.cells("trt");
    String[] dates = table.cells("date");
    Map<String, double[]> sums = new LinkedHashMap<>();
    for (int i = 0; i < values.length; i++) {
      String key = yards[i] + "," + halves[i] + "," + dates[i];
      double[] sum = sums.computeIfAbsent(key, k -> new double[2]);
      sum[0] += Double.parseDouble(values[i]);
      sum[1]++;
    }
    StringBuilder text = new StringBuilder("yard,trt,date,logK\n");
    sums.forEach((key, sum) -> text.append(key).append(',').append(sum[0] / sum[1]).append('\n'));
    write(to, text.toString());
  }

  /** A split-yard season: 12 yards, two halves, six dates. */
  static TrialTable splitYards(long seed) {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder("yard,practice,date,value\n");
    for (int yard = 0; yard < 12; yard++) {
      double own = 0.3 * random.nextGaussian();
      double[] halves = effects(random, 2, 0.12);
      double[] dates = effects(random, 6, 0.1);
      for (int half = 0; half < 2; half++) {
        for (int date = 0; date < 6; date++) {
          double value = 3 + own + halves[half] + dates[date] + 0.2 * random.nextGaussian();
          String practice = half == 0 ? "collected" : "returned";
          text.append(String.format(Locale.ROOT, "%d,%s,%d,%.5f\n", yard, practice, date, value));
        }
      }
    }
    return TrialDataFile.read(new SourceText("season", text.toString()));
  }

  private static void write(Path file, String text) {
    try {
      Files.createDirectories(file.getParent());
      Files.write(file, text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A number as it goes into a table of results. */
  static String inMs(double nanos) {
    return String.format(Locale.ROOT, "%.3f", nanos / 1e6);
  }
}
