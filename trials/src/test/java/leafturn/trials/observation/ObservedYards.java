package leafturn.trials.observation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.Plans;
import leafturn.trials.observation.Remark.Weight;
import org.jspecify.annotations.Nullable;

/** Split yards and their readings, for the tests of mistakes. */
final class ObservedYards {
  static final LocalDate MAY = LocalDate.of(2026, 5, 4);

  static final Outcome SOIL_K =
      new Outcome(
          "soil K",
          Outcome.Kind.SOIL,
          "mg/kg K",
          null,
          null,
          Outcome.Scale.LOG,
          Outcome.Summary.LAST_DATE,
          1.2,
          true);

  static final Outcome QUALITY = Plans.quality(0.5);

  /** Split yards: the west half collected in odd yards, returned in even ones. */
  static List<ObservedPlot> yards(int count) {
    List<ObservedPlot> plots = new ArrayList<>();
    for (int yard = 1; yard <= count; yard++) {
      boolean odd = yard % 2 == 1;
      plots.add(half(yard, 1, odd ? "collected" : "returned", "west"));
      plots.add(half(yard, 2, odd ? "returned" : "collected", "east"));
    }
    return plots;
  }

  static ObservedPlot half(int yard, int number, String arm, String side) {
    return new ObservedPlot(
        "B%d-%d".formatted(yard, number), "yard " + yard, arm, 100, Map.of("side", side));
  }

  static Reading rating(String plot, LocalDate date, String value) {
    return Reading.own(plot, date, "quality", value, "Ada");
  }

  static Reading measured(
      String plot, String value, @Nullable String unit, @Nullable String method) {
    return measured(plot, MAY, value, unit, method, null, null);
  }

  static Reading measured(
      String plot,
      LocalDate date,
      String value,
      @Nullable String unit,
      @Nullable String method,
      @Nullable String batch,
      @Nullable Integer duplicate) {
    return MeasuredReading.of(plot, date, SOIL_K.name(), value, unit)
        .by("Fen Laboratory", method)
        .batch(batch)
        .sample("AB12C")
        .duplicate(duplicate)
        .reading();
  }

  /** A laboratory's value of the soil in the bag of a plot. */
  static Reading sample(String code, String value, @Nullable Integer duplicate) {
    return MeasuredReading.of("B1-1", MAY, SOIL_K.name(), value, "mg/kg")
        .by("Fen", "Mehlich-3")
        .sample(code)
        .duplicate(duplicate)
        .reading();
  }

  static List<String> sentences(List<Remark> remarks, Weight weight) {
    return remarks.stream()
        .filter(remark -> remark.weight() == weight)
        .map(Remark::sentence)
        .toList();
  }

  private ObservedYards() {}
}
