package leafturn.records.exchange;

import java.util.List;
import java.util.Optional;
import leafturn.records.Faults;
import leafturn.records.NearestName;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Nearness;
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
  /** So many properties without a station are named; of more the number is told. */
  private static final int MOST_NAMED = 5;

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

  /** A property that names no station takes the only one there is, if that is known to be near. */
  Property withTheOnlyOne(Table.Row row, Property property) {
    return faults.text(row, PropertyColumns.STATION).isEmpty()
            && all.size() == 1
            && Nearness.isNear(property, all.get(0).content())
        ? property.following(all.get(0).id())
        : property;
  }

  /** What weather a property follows, in a few words. */
  String words(Property property) {
    return all.stream()
        .filter(station -> station.id().equals(property.station()))
        .map(station -> "weather of " + station.content().name())
        .findFirst()
        .orElse("no weather station yet");
  }

  /** Where properties that follow none get their weather, in a sentence. */
  String notes(List<Property> added) {
    List<String> without =
        added.stream().filter(property -> property.station() == null).map(Property::name).toList();
    if (without.isEmpty()) {
      return "";
    }
    int more = without.size() - MOST_NAMED;
    String names =
        String.join(", ", without.subList(0, Math.min(MOST_NAMED, without.size())))
            + (more > 0 ? " and %,d more".formatted(more) : "");
    String why =
        all.isEmpty()
            ? "the book has no weather station."
            : all.size() == 1
                ? "%s, the only station of the book, is not known to lie near: it or they have no longitude, or they lie more than %s apart (our judgement)."
                    .formatted(all.get(0).content().name(), Nearness.LIMITS)
                : "the book has several, and the table names none.";
    return "No weather station yet, so no advice: %s; %s Name one in a column called station, or choose one on the property’s page."
        .formatted(names, why);
  }

  /** Tells that a property named a station of the other hemisphere, or one that is far away. */
  void check(Table.Row row, Property property, Findings remarks) {
    all.stream()
        .filter(station -> station.id().equals(property.station()))
        .flatMap(station -> Nearness.far(property, station.content()).stream())
        .forEach(sentence -> remarks.add(row, PropertyColumns.STATION, sentence));
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
