package leafturn.records.round;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.records.Dates;
import leafturn.records.WeatherFile;
import leafturn.records.WeatherReading;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.book.StationDays;
import leafturn.records.sheet.WeatherStation;

/** A station's weather up to a day, and the climates made from it for the sites it stands for. */
final class StationWeather {
  /** Why there is no advice where a property has no station. */
  static final String NONE =
      "There is no weather for this property yet: whoever may change it chooses a weather station"
          + " for it, or adds one.";

  private final WeatherSeries series;
  private final int measuredDays;
  private final List<String> notes;
  private final Map<Site, SiteClimate> climates = new ConcurrentHashMap<>();

  private StationWeather(WeatherSeries series, int measuredDays, List<String> notes) {
    this.series = series;
    this.measuredDays = measuredDays;
    this.notes = List.copyOf(notes);
  }

  /**
   * A station's weather, with days that stand in where its record ends before a day.
   *
   * @throws leafturn.records.InputException when the record cannot be used
   */
  static StationWeather upTo(BookReading reading, Sheet<WeatherStation> station, LocalDate day) {
    SortedMap<LocalDate, Map<Quantity, Double>> days = new TreeMap<>();
    StationDays.of(reading, station.id())
        .forEach(measured -> days.put(measured.day(), measured.values()));
    WeatherStation about = station.content();
    WeatherReading record = WeatherFile.completed(about.name(), days);
    List<String> notes = new ArrayList<>(record.notes());
    if (about.standIn()) {
      notes.add(
          "The weather of %s (%s) stands in for that of this place."
              .formatted(about.name(), about.origin()));
    }
    WeatherSeries series = StandIn.upTo(record.series(), day);
    if (series.days() > record.series().days()) {
      notes.add(
          "No weather since %s: the same days of earlier years stand in."
              .formatted(Dates.words(record.series().lastDay())));
    }
    return new StationWeather(series, record.series().days(), notes);
  }

  /** First day of its record. */
  LocalDate firstDay() {
    return series.firstDay();
  }

  /** The climate of a site under this weather, made once. */
  SiteClimate at(Site site) {
    return climates.computeIfAbsent(site, place -> new SiteClimate(series, place, measuredDays));
  }

  /** What a reader of a call must know of it, one sentence each. */
  List<String> notes() {
    return notes;
  }
}
