package leafturn.records.exchange;

import java.util.List;
import java.util.Optional;
import leafturn.records.Faults;
import leafturn.records.NearestName;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Property;
import leafturn.records.sheet.WeatherStation;
import leafturn.records.table.Table;

/**
 * The weather stations of a book, as a table of properties names them.
 *
 * @param all every station of the book
 * @param faults where a name is told that is no station's
 */
record NamedStations(List<Sheet<WeatherStation>> all, Findings faults) {
  /** Gives a property the station that its row names, if any. */
  void named(Table.Row row, RowDocument document) {
    String name = faults.text(row, PropertyColumns.STATION);
    if (name.isEmpty()) {
      return;
    }
    Optional<Sheet<WeatherStation>> station =
        all.stream().filter(each -> each.content().name().equalsIgnoreCase(name)).findFirst();
    station.ifPresentOrElse(
        found -> document.put("station", found.id()),
        () ->
            faults.add(
                row,
                PropertyColumns.STATION,
                "%s is no weather station of this book; %s"
                    .formatted(Faults.quoted(name), advice(name))));
  }

  /** A property that names no station takes the only one there is, of its hemisphere. */
  void theOnlyOne(Table.Row row, RowDocument document) {
    if (faults.text(row, PropertyColumns.STATION).isEmpty() && all.size() == 1) {
      double latitude = document.json().path("latitudeDeg").asDouble();
      if (!Property.hasOppositeSeasons(latitude, all.get(0).content())) {
        document.put("station", all.get(0).id());
      }
    }
  }

  /** Tells that a property named a station of the other hemisphere. */
  void check(Table.Row row, Property property) {
    all.stream()
        .filter(station -> station.id().equals(property.station()))
        .flatMap(station -> property.oppositeSeasons(station.content()).stream())
        .forEach(
            sentence ->
                faults.add(
                    row,
                    PropertyColumns.STATION,
                    sentence + " Name another station, or empty the cell."));
  }

  private String advice(String name) {
    List<String> names = all.stream().map(each -> each.content().name()).toList();
    return names.isEmpty()
        ? "add the station first, or empty the cell."
        : NearestName.advice(name, names);
  }
}
