package leafturn.records;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import leafturn.model.weather.WeatherSeries.Quantity;

/**
 * Daily weather of the GHCN-Daily archive as it was measured, with its gaps.
 *
 * @param days what was measured, by day
 * @param place name of the location or station, empty when the file names none
 * @param format the format it was read in, in words
 * @param notes what a reader must know, one sentence each
 */
public record ArchiveReading(
    SortedMap<LocalDate, Map<Quantity, Double>> days,
    String place,
    String format,
    List<String> notes) {
  public ArchiveReading {
    notes = List.copyOf(notes);
  }
}
