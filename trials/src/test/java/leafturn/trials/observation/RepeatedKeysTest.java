package leafturn.trials.observation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import leafturn.trials.analysis.Models;
import leafturn.trials.analysis.ReferenceCase;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.observation.Remark.Weight;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows that stand twice: a slip, or samples of one plot. */
class RepeatedKeysTest {
  private static final List<String> COLUMNS = List.of("yard", "practice", "date", "k");

  private static List<List<String>> season() {
    return season(6);
  }

  private static List<List<String>> season(int yards) {
    List<List<String>> rows = new ArrayList<>();
    for (int yard = 1; yard <= yards; yard++) {
      for (String practice : List.of("collected", "returned")) {
        for (String date : List.of("2026-04-20", "2026-06-15", "2026-08-10")) {
          rows.add(List.of("yard " + yard, practice, date, String.valueOf(100 + rows.size() % 7)));
        }
      }
    }
    return rows;
  }

  private static TrialTable table(List<String> columns, List<List<String>> rows) {
    return new TrialTable(
        columns, rows, IntStream.range(0, rows.size()).map(i -> i + 2).boxed().toList());
  }

  private static TrialModel split() {
    return Models.of("k")
        .factors("practice", "date")
        .fixed("practice", "date", "practice*date")
        .random("yard")
        .random("yard", "practice")
        .random("yard", "date")
        .model();
  }

  private static void assertOne(List<Remark> remarks, Weight weight, String... words) {
    assertThat(remarks)
        .singleElement()
        .satisfies(
            remark -> {
              assertThat(remark.weight()).isEqualTo(weight);
              assertThat(words).allSatisfy(word -> assertThat(remark.sentence()).contains(word));
            });
  }

  @Test
  void aPlotAndDateEnteredTwiceIsRefusedWithItsLinesAndValues() {
    List<List<String>> rows = season();
    assertThat(RepeatedKeys.remarks(table(COLUMNS, rows), split())).isEmpty();
    rows.add(List.of("yard 1", "collected", "2026-06-15", "133"));
    assertThat(RepeatedKeys.remarks(table(COLUMNS, rows), split()))
        .singleElement()
        .satisfies(
            remark -> {
              assertThat(remark.weight()).isEqualTo(Weight.REFUSED);
              assertThat(remark.sentence())
                  .startsWith(
                      "yard 1, practice collected, date 2026-06-15: k stands on lines 3 and 38 as 101 and 133;");
            });
    rows.set(36, List.of("yard 1", "collected", "2026-06-15", ""));
    assertThat(RepeatedKeys.remarks(table(COLUMNS, rows), split())).isEmpty();
  }

  @Test
  void manySlipsAreCountedAfterTheFirstFew() {
    List<List<String>> rows = season(20);
    rows.addAll(season().subList(0, 8));
    List<Remark> remarks = RepeatedKeys.remarks(table(COLUMNS, rows), split());
    assertThat(remarks).hasSize(6).allMatch(each -> each.weight() == Weight.REFUSED);
    assertThat(remarks.get(5).sentence()).isEqualTo("3 more stand twice in the same way.");
  }

  @Test
  void moreThanATenthIsHowPlotsWereSampledAndAWarning() {
    List<List<String>> rows = season();
    rows.addAll(season().subList(0, 8));
    assertOne(
        RepeatedKeys.remarks(table(COLUMNS, rows), split()),
        Weight.WARNING,
        "8 of 36 combinations");
  }

  @Test
  void samplesThatTheModelDoesNotKnowAreAWarning() {
    List<List<String>> rows = new ArrayList<>(season());
    rows.addAll(season());
    assertOne(
        RepeatedKeys.remarks(table(COLUMNS, rows), split()),
        Weight.WARNING,
        "36 of 36 combinations",
        "lines 2 and 38",
        "random term within yard");
    List<List<String>> cores = new ArrayList<>();
    season().forEach(row -> cores.add(numbered(row, "1")));
    cores.add(numbered(season().get(4), "2"));
    List<String> columns = List.of("yard", "practice", "date", "k", "core");
    assertOne(
        RepeatedKeys.remarks(table(columns, cores), split()),
        Weight.WARNING,
        "1 of 36",
        "told apart by core");
  }

  private static List<String> numbered(List<String> row, String core) {
    List<String> all = new ArrayList<>(row);
    all.add(core);
    return all;
  }

  @Test
  void samplesHeldTogetherByARandomTermAreNoFault() {
    List<List<String>> rows = new ArrayList<>(season());
    rows.addAll(season());
    TrialModel sampled =
        Models.of("k")
            .factors("practice", "date")
            .fixed("practice", "date")
            .random("yard")
            .random("yard", "practice", "date")
            .model();
    assertThat(RepeatedKeys.remarks(table(COLUMNS, rows), sampled)).isEmpty();
    List<List<String>> slip = new ArrayList<>(season());
    slip.add(season().get(0));
    assertOne(RepeatedKeys.remarks(table(COLUMNS, slip), sampled), Weight.WARNING, "entered twice");
  }

  @Test
  void withBlocksInTheFixedPartASlipIsAWarning() {
    List<List<String>> rows = season();
    rows.add(List.of("yard 2", "returned", "2026-04-20", "140"));
    TrialModel fixed =
        Models.of("k")
            .factors("yard", "practice", "date")
            .fixed("yard", "practice", "date")
            .model();
    assertOne(RepeatedKeys.remarks(table(COLUMNS, rows), fixed), Weight.WARNING);
    TrialModel oneWay = Models.of("k").factors("practice").fixed("practice").model();
    assertThat(RepeatedKeys.remarks(table(COLUMNS, rows), oneWay)).isEmpty();
  }

  @Test
  void aControlThatEachBlockHoldsTwiceIsNoSlip() {
    List<List<String>> rows = new ArrayList<>();
    for (int block = 1; block <= 4; block++) {
      for (String arm : List.of("none", "half", "full", "none")) {
        rows.add(List.of("block " + block, arm, String.valueOf(20 + rows.size() % 5)));
      }
    }
    TrialModel blocks = Models.of("k").factors("rate").fixed("rate").random("block").model();
    List<String> columns = List.of("block", "rate", "k");
    assertOne(RepeatedKeys.remarks(table(columns, rows), blocks), Weight.WARNING);
    rows.remove(3);
    rows.remove(6);
    rows.remove(9);
    assertOne(RepeatedKeys.remarks(table(columns, rows), blocks), Weight.REFUSED);
  }

  @ParameterizedTest
  @CsvSource({
    "machines, score, Machine, Worker, Machine",
    "oats_splitplot, yield, Variety, Block, Variety",
    "ergostool, effort, Type, Subject,",
    "dyestuff, Yield,, Batch,",
    "penicillin, diameter,, plate, sample"
  })
  void publishedTrialsAreNotDoubted(
      String name, String response, String fixed, String unit, String within) {
    Models models = Models.of(response);
    if (fixed != null) {
      models = models.factors(fixed).fixed(fixed);
    }
    models = models.random(unit);
    if (within != null) {
      models = name.equals("penicillin") ? models.random(within) : models.random(unit, within);
    }
    assertThat(RepeatedKeys.remarks(new ReferenceCase(name).table(), models.model()))
        .noneMatch(remark -> remark.weight() == Weight.REFUSED);
  }
}
