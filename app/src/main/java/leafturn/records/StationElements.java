package leafturn.records;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.quantity.Range;
import leafturn.records.MeasuredDays.RainTotal;
import leafturn.records.WeatherReading.Counts;
import org.jspecify.annotations.Nullable;

/**
 * Turns the elements of the GHCN-Daily archive into measured days: a value with a quality flag is
 * dropped and counted, a trace of rain is 0 mm, and rain read once for several days is kept as a
 * total, never as the rain of one day. The meaning of flag P and of the humidity elements is from
 * memory.
 */
final class StationElements {
  static final int MISSING = -9999;

  private static final double TENTHS = 0.1;
  private static final int MOST_DAYS_IN_TOTAL = 366;
  private static final Map<String, Element> USED =
      Map.of(
          "TMAX", new Element(Quantity.MAXIMUM_C, TENTHS),
          "TMIN", new Element(Quantity.MINIMUM_C, TENTHS),
          "PRCP", new Element(Quantity.RAIN_MM, TENTHS),
          "AWND", new Element(Quantity.WIND_M_PER_S, TENTHS),
          "ADPT", new Element(Quantity.DEW_POINT_C, TENTHS),
          "RHMX", new Element(Quantity.HUMIDITY_MAXIMUM_PERCENT, 1),
          "RHMN", new Element(Quantity.HUMIDITY_MINIMUM_PERCENT, 1));

  private final Faults faults;
  private final @Nullable String site;
  private final MeasuredDays days = new MeasuredDays();
  private final Set<String> stations = new TreeSet<>();
  private final Set<String> unused = new TreeSet<>();
  private final Map<LocalDate, Double> rainTotals = new HashMap<>();
  private final Map<LocalDate, Integer> daysOfTotals = new HashMap<>();
  private final Set<LocalDate> flaggedTotals = new HashSet<>();
  private int flagged;
  private int traces;
  private int presumedZero;

  private record Element(Quantity quantity, double factor) {}

  /**
   * One value of the archive.
   *
   * @param line line it stands on
   * @param element four letters, for instance TMAX
   * @param value in the element's own unit
   * @param measurementFlag blank, or how it was measured
   * @param qualityFlag blank, or the check it failed
   */
  record Entry(
      long line,
      LocalDate day,
      String element,
      int value,
      char measurementFlag,
      char qualityFlag) {}

  StationElements(@Nullable String site, Faults faults) {
    this.site = site;
    this.faults = faults;
  }

  /** True when the values of this station are to be read: the one asked for, else the first. */
  boolean wanted(String station) {
    stations.add(station);
    return site == null ? stations.size() == 1 : station.equals(site);
  }

  /** Books one value that is not missing. */
  void add(Entry entry) {
    if (entry.qualityFlag() != ' ') {
      flagged++;
      if (entry.element().equals("MDPR")) {
        flaggedTotals.add(entry.day());
      }
      return;
    }
    switch (entry.element()) {
      case "MDPR" -> total(entry);
      case "DAPR" -> daysOfTotal(entry);
      default -> {
        Element element = USED.get(entry.element());
        if (element == null) {
          unused.add(entry.element());
        } else {
          measured(entry, element);
        }
      }
    }
  }

  private void total(Entry entry) {
    double rainMm = entry.value() * TENTHS;
    if (inRange(entry, WeatherLimits.of(Quantity.RAIN_MM), rainMm)
        && rainTotals.put(entry.day(), rainMm) != null) {
      twice(entry);
    }
  }

  private void daysOfTotal(Entry entry) {
    if (inRange(entry, new Range("the number of days", 1, MOST_DAYS_IN_TOTAL, ""), entry.value())
        && daysOfTotals.put(entry.day(), entry.value()) != null) {
      twice(entry);
    }
  }

  private void measured(Entry entry, Element element) {
    double value = entry.value() * element.factor();
    if (!inRange(entry, WeatherLimits.of(element.quantity()), value)) {
      return;
    }
    if (!days.put(entry.day(), element.quantity(), value)) {
      twice(entry);
      return;
    }
    if (element.quantity() == Quantity.RAIN_MM && entry.measurementFlag() == 'T') {
      traces++;
      days.put(entry.day(), Quantity.RAIN_MM, 0);
    } else if (element.quantity() == Quantity.RAIN_MM && entry.measurementFlag() == 'P') {
      presumedZero++;
    }
  }

  private boolean inRange(Entry entry, Range limits, double value) {
    if (limits.contains(value)) {
      return true;
    }
    faults.add(
        entry.line(),
        entry.element(),
        "on %s %s is %s %s, out of range; it must lie %s."
            .formatted(
                entry.day(),
                limits.name(),
                Numbers.plain(value),
                limits.unit(),
                Numbers.range(limits.low(), limits.high())));
    return false;
  }

  private void twice(Entry entry) {
    faults.add(
        entry.line(), entry.element(), "%s has this twice; keep one.".formatted(entry.day()));
  }

  /** The days, from the first to the last on which temperatures and rain are there. */
  MeasuredDays days(List<String> notes) {
    checkStations();
    days.checkTemperatures(faults);
    rainTotals.forEach(
        (day, rainMm) ->
            days.putRainTotal(new RainTotal(day, daysOfTotals.getOrDefault(day, 0), rainMm)));
    int left = days.trimToCompleteDays();
    if (days.isEmpty() && faults.none()) {
      faults.add("it has no day with TMAX, TMIN and PRCP; choose another station.");
    }
    tellWhatWasDone(left, notes);
    return days;
  }

  private void checkStations() {
    if (site == null && stations.size() > 1) {
      faults.add(
          "it holds %d stations (%s); choose one with --site."
              .formatted(stations.size(), WeatherCsv.told(stations)));
    } else if (site != null && !stations.contains(site)) {
      faults.add(
          "it has no station %s; it holds %s."
              .formatted(Faults.quoted(site), WeatherCsv.told(stations)));
    }
  }

  private void tellWhatWasDone(int left, List<String> notes) {
    if (left > 0) {
      notes.add(
          "%d days before the first or after the last with temperatures and rain were left out."
              .formatted(left));
    }
    if (flagged > 0) {
      notes.add(
          "%d values failed the archive's quality checks and were dropped.".formatted(flagged));
    }
    if (traces > 0) {
      notes.add("%d days with a trace of rain count as 0 mm.".formatted(traces));
    }
    if (presumedZero > 0) {
      notes.add("On %d days the archive presumes that no rain fell.".formatted(presumedZero));
    }
    if (!rainTotals.isEmpty()) {
      notes.add(
          "%d readings hold the rain of several days; each is shared equally among its days."
              .formatted(rainTotals.size()));
    }
    if (!flaggedTotals.isEmpty()) {
      notes.add(
          "%d rain totals of several days failed the quality checks; their rain is unknown."
              .formatted(flaggedTotals.size()));
    }
    if (!unused.isEmpty()) {
      notes.add("Elements not used: " + String.join(", ", unused) + ".");
    }
  }

  /** The station read. */
  String place() {
    return site != null || stations.isEmpty() ? String.valueOf(site) : stations.iterator().next();
  }

  Counts counts() {
    return new Counts(flagged, traces, presumedZero);
  }
}
