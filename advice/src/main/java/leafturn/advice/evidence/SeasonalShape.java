package leafturn.advice.evidence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import leafturn.advice.evidence.Treatment.Mowing;
import leafturn.model.Flows;
import leafturn.model.lawn.DayListener;
import leafturn.model.lawn.LawnRun;

/** How leaf growth and mowing intervals go through the year under the one-third rule. */
final class SeasonalShape implements DayListener {
  private static final int YEARS = 4;

  private final double[] growthG = new double[12];
  private final int[] days = new int[12];
  private final TreeMap<Integer, List<Integer>> intervals = new TreeMap<>();
  private int lastMowing = -1;

  private SeasonalShape() {}

  static List<Measured> on(TrialGround ground) {
    List<Measured> measured = new ArrayList<>();
    SeasonalShape fescue = of(ground, Plot.TALL_FESCUE, 147);
    SeasonalShape bluegrass = of(ground, Plot.BLUEGRASS, 147);
    SeasonalShape bermuda = of(ground, Plot.BERMUDAGRASS, 195);
    measured.addAll(fescue.growth("tf"));
    measured.addAll(fescue.coolSeasonIntervals("tf"));
    measured.addAll(bluegrass.growth("kbg"));
    measured.addAll(bluegrass.coolSeasonIntervals("kbg"));
    measured.addAll(bermuda.growth("bermuda"));
    measured.add(
        Measured.several(
            "shape.bermuda.interval", bermuda.intervalText(), bermuda.meanIntervals(6, 7, 8)));
    return measured;
  }

  private static SeasonalShape of(TrialGround ground, Plot plot, double rate) {
    SeasonalShape shape = new SeasonalShape();
    ground.run(plot, Treatment.collected(rate).mown(Mowing.ONE_THIRD), YEARS, shape);
    return shape;
  }

  @Override
  public void dayDone(LawnRun run) {
    LocalDate today = run.terms().date(run.day());
    int month = today.getMonthValue();
    growthG[month - 1] += run.flow(Flows.LEAF_GROWTH_G);
    days[month - 1]++;
    if (run.flow(Flows.MOWINGS) > 0) {
      if (lastMowing >= 0 && run.terms().year(lastMowing) == today.getYear()) {
        intervals.computeIfAbsent(month, m -> new ArrayList<>()).add(run.day() - lastMowing);
      }
      lastMowing = run.day();
    }
  }

  private double meanGrowth(int month) {
    int index = Math.floorMod(month - 1, 12);
    return growthG[index] / days[index];
  }

  private List<Measured> growth(String grass) {
    List<Integer> peaks =
        IntStream.rangeClosed(1, 12)
            .filter(m -> meanGrowth(m) > meanGrowth(m - 1) && meanGrowth(m) > meanGrowth(m + 1))
            .boxed()
            .toList();
    String byMonth =
        IntStream.rangeClosed(1, 12)
            .mapToObj(m -> Measured.number(meanGrowth(m), 2))
            .collect(Collectors.joining(" "));
    double most = IntStream.rangeClosed(1, 12).mapToDouble(this::meanGrowth).max().orElseThrow();
    return List.of(
        Measured.of("shape." + grass + ".growth", most, "January to December %s", byMonth),
        Measured.of("shape." + grass + ".peaks", peaks.size(), "months %s", peaks));
  }

  private List<Measured> coolSeasonIntervals(String grass) {
    String id = "shape." + grass + ".interval.";
    return List.of(
        Measured.several(id + "april", intervalText(), meanIntervals(4)),
        Measured.several(id + "may", "", meanIntervals(5)),
        Measured.several(id + "season", "", meanIntervals(6, 7, 9, 10, 11)),
        Measured.several(id + "august", "", meanIntervals(8)));
  }

  private double[] meanIntervals(int... months) {
    return IntStream.of(months)
        .mapToDouble(
            month ->
                intervals.getOrDefault(month, List.of()).stream()
                    .mapToInt(i -> i)
                    .average()
                    .orElse(Double.NaN))
        .toArray();
  }

  /** Month: mean (shortest-longest), for each month with intervals that began in the same year. */
  private String intervalText() {
    return intervals.entrySet().stream()
        .map(
            entry ->
                "%d: %.0f (%d-%d)"
                    .formatted(
                        entry.getKey(),
                        meanIntervals(entry.getKey())[0],
                        entry.getValue().stream().mapToInt(i -> i).min().orElseThrow(),
                        entry.getValue().stream().mapToInt(i -> i).max().orElseThrow()))
        .collect(Collectors.joining(", ", "days by month ", ""));
  }
}
