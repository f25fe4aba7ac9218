package leafturn.records;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import leafturn.model.weather.WeatherSeries;

/**
 * Daily weather as read.
 *
 * @param series the weather, complete
 * @param place name of the location or station, empty when the file names none
 * @param format the format it was read in, in words
 * @param filled values that were not in the file, by day
 * @param counts values that were changed or dropped by their flags
 * @param notes what a reader of the results must know, one sentence each
 */
public record WeatherReading(
    WeatherSeries series,
    String place,
    String format,
    List<FilledValue> filled,
    Counts counts,
    List<String> notes) {
  public WeatherReading {
    filled = List.copyOf(filled);
    notes = List.copyOf(notes);
  }

  /** Days with at least one value that was not in the file. */
  public Set<LocalDate> filledDays() {
    Set<LocalDate> days = new TreeSet<>();
    filled.forEach(value -> days.add(value.day()));
    return days;
  }

  /**
   * @param flaggedDropped values that failed the archive's own quality checks and were left out
   * @param traceDays days with a trace of rain, read as 0 mm
   * @param presumedZeroDays days whose missing rain the archive presumes to be 0 mm
   */
  public record Counts(int flaggedDropped, int traceDays, int presumedZeroDays) {
    static final Counts NONE = new Counts(0, 0, 0);
  }
}
