package leafturn.records.archive;

import java.util.ArrayList;
import java.util.List;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.ForecastSheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.Property;
import leafturn.records.sheet.SoilTestSheet;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialReadingsSheet;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.sheet.VisitSheet;
import org.jspecify.annotations.Nullable;

/** The sheets that a sheet names by their ids. */
final class References {
  private References() {}

  /**
   * A sheet that is named.
   *
   * @param field the field that names it
   * @param kind the kind it must be of
   * @param id its id
   */
  record Named(String field, Kind<?> kind, String id) {}

  /** The sheets that a content belongs to, without which it cannot be kept. */
  static List<Named> belonging(Content content) {
    List<Named> named = new ArrayList<>();
    add(named, "property", Kind.PROPERTY, content.property());
    add(named, "lawn", Kind.LAWN, content.lawn());
    return named;
  }

  /** All sheets that a content names. */
  static List<Named> of(Content content) {
    List<Named> named = belonging(content);
    if (content instanceof Property property) {
      add(named, "station", Kind.STATION, property.station());
    } else if (content instanceof ForecastSheet forecast) {
      add(named, "station", Kind.STATION, forecast.station());
    } else if (content instanceof LogSheet log) {
      log.photographs().forEach(id -> add(named, "photographs", Kind.PHOTOGRAPH, id));
    } else if (content instanceof VisitSheet visit) {
      visit
          .photographs()
          .forEach(point -> add(named, "photographs", Kind.PHOTOGRAPH, point.photograph()));
    } else if (content instanceof SoilTestSheet test) {
      add(named, "bed", Kind.BED, test.bed());
    } else {
      ofTrial(named, content);
    }
    return named;
  }

  private static void ofTrial(List<Named> named, Content content) {
    if (content instanceof TrialSheet trial) {
      trial.lawns().forEach(id -> add(named, "lawns", Kind.LAWN, id));
    } else if (content instanceof TrialReadingsSheet readings) {
      add(named, "trial", Kind.TRIAL, readings.trial());
      add(named, "laboratory", Kind.LABORATORY, readings.laboratory());
    } else if (content instanceof TrialEventSheet event) {
      add(named, "trial", Kind.TRIAL, event.trial());
    }
  }

  private static void add(List<Named> named, String field, Kind<?> kind, @Nullable String id) {
    if (id != null) {
      named.add(new Named(field, kind, id));
    }
  }
}
