package leafturn.trials.observation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import leafturn.trials.analysis.Cases;
import leafturn.trials.analysis.Models;
import leafturn.trials.analysis.ReferenceCase;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.model.OverTime;
import leafturn.trials.analysis.model.TrialModel;
import org.junit.jupiter.api.Test;

/** Dates and cores that a model takes for units of their own. */
class RepeatedUnitsTest {
  private static TrialTable table(String repeat) {
    StringBuilder csv = new StringBuilder("yard,arm,%s,y\n".formatted(repeat));
    for (int yard = 1; yard <= 4; yard++) {
      for (String arm : List.of("c", "r")) {
        for (int day = 1; day <= 5; day++) {
          csv.append(
              "%d,%s,2026-04-0%d,%d.%d%n".formatted(yard, arm, day, yard + day, day * 2 - 1));
        }
      }
    }
    return ReferenceCase.table(csv.toString());
  }

  private static List<Remark> remarks(String repeat, Models model) {
    return RepeatedUnits.remarks(table(repeat), model.model());
  }

  @Test
  void datesWithoutARandomTermForThePlotAreTold() {
    Models dates = Models.of("y").factors("arm", "date").fixed("arm", "date").random("yard");
    assertThat(remarks("date", dates))
        .singleElement()
        .satisfies(
            remark -> {
              assertThat(remark.weight()).isEqualTo(Remark.Weight.WARNING);
              assertThat(remark.sentence())
                  .contains("arm was given to 8 units (yard, arm)", "random term within yard, arm");
            });
    assertThat(remarks("when", dates.random("yard", "when"))).hasSize(1);
    assertThat(remarks("date", dates.random("yard", "arm"))).isEmpty();
  }

  @Test
  void coresWithoutAnyRandomTermAreToldWhereAColumnNamesTheUnits() {
    Models arm = Models.of("y").factors("arm").fixed("arm");
    assertThat(remarks("core", arm)).hasSize(1);
    Models yards = Models.of("y").factors("yard", "arm").fixed("yard", "arm");
    assertThat(remarks("core", yards)).hasSize(1);
    assertThat(remarks("core", yards.random("yard", "arm"))).isEmpty();
  }

  @Test
  void publishedTrialsAreNotDoubted() {
    Map<String, TrialModel> right =
        Map.ofEntries(
            Map.entry("oats_splitplot", Cases.oats().model()),
            Map.entry(
                "npk",
                Models.of("yield").factors("N", "P").fixed("N", "P").random("block").model()),
            Map.entry(
                "sleepstudy",
                Models.of("Reaction").factors("Days").fixed("Days").random("Subject").model()),
            Map.entry(
                "bodyweight",
                Models.of("weight")
                    .factors("Diet", "Time")
                    .fixed("Diet", "Time", "Diet*Time")
                    .overTime(OverTime.Correlation.CAR1, "Time", "Rat")
                    .model()),
            Map.entry(
                "karcher_turfgrass",
                Models.of("rating")
                    .ordinal()
                    .factors("manage", "nitro", "week")
                    .fixed("manage", "nitro", "week")
                    .random("rep", "manage", "nitro")
                    .model()),
            Map.entry(
                "speed_synthetic",
                Models.of("logK")
                    .factors("trt", "date")
                    .fixed("trt", "date", "trt*date")
                    .random("yard")
                    .random("yard", "trt")
                    .random("yard", "date")
                    .model()),
            Map.entry(
                "warpbreaks",
                Models.of("breaks").factors("wool", "tension").fixed("wool", "tension").model()),
            Map.entry("plantgrowth", Models.of("weight").factors("group").fixed("group").model()));
    right.forEach(
        (name, model) ->
            assertThat(RepeatedUnits.remarks(new ReferenceCase(name).table(), model))
                .as(name)
                .isEmpty());
  }
}
