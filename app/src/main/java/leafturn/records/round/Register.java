package leafturn.records.round;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookTitle;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.Property;
import leafturn.records.sheet.WeatherStation;
import org.jspecify.annotations.Nullable;

/**
 * What a book holds, as it stood at one moment.
 *
 * @param title its cover
 * @param properties its properties, as they were entered
 * @param lawns the lawns of these properties, property by property
 */
public record Register(BookTitle title, List<Sheet<Property>> properties, List<PlacedLawn> lawns) {
  public Register {
    properties = List.copyOf(properties);
    lawns = List.copyOf(lawns);
  }

  /** Reads it. */
  static Register of(BookReading reading) {
    Map<String, Sheet<WeatherStation>> stations = byId(reading.all(Kind.STATION));
    List<Sheet<Property>> properties = reading.all(Kind.PROPERTY);
    Map<String, List<PlacedLawn>> lawns = new HashMap<>();
    Map<String, Sheet<Property>> byId = byId(properties);
    reading
        .all(Kind.LAWN)
        .forEach(
            lawn -> {
              Sheet<Property> property = byId.get(lawn.content().property());
              if (property != null) {
                lawns
                    .computeIfAbsent(property.id(), id -> new ArrayList<>())
                    .add(new PlacedLawn(property, lawn, station(property, stations)));
              }
            });
    return new Register(
        BookTitle.of(reading),
        properties,
        properties.stream()
            .flatMap(property -> lawns.getOrDefault(property.id(), List.of()).stream())
            .toList());
  }

  private static @Nullable Sheet<WeatherStation> station(
      Sheet<Property> property, Map<String, Sheet<WeatherStation>> stations) {
    String id = property.content().station();
    return id == null ? null : stations.get(id);
  }

  private static <C extends Content> Map<String, Sheet<C>> byId(List<Sheet<C>> sheets) {
    Map<String, Sheet<C>> byId = new HashMap<>();
    sheets.forEach(sheet -> byId.put(sheet.id(), sheet));
    return byId;
  }

  /** This register with only some of its properties and their lawns. */
  public Register only(Predicate<String> propertyIds) {
    return new Register(
        title,
        properties.stream().filter(property -> propertyIds.test(property.id())).toList(),
        lawns.stream().filter(lawn -> propertyIds.test(lawn.property().id())).toList());
  }

  /** This register with only the lawn of an address and its property; empty without it. */
  public Register onlyLawn(String address) {
    List<PlacedLawn> found = lawns.stream().filter(lawn -> lawn.address().equals(address)).toList();
    return new Register(title, found.stream().map(PlacedLawn::property).toList(), found);
  }

  /** The lawn with this name in addresses. */
  public Optional<PlacedLawn> lawn(String address) {
    return lawns.stream().filter(lawn -> lawn.address().equals(address)).findFirst();
  }

  /** Where the weather of its lawns comes from, each origin once. */
  List<String> weatherOrigins() {
    return lawns.stream()
        .map(PlacedLawn::station)
        .filter(Objects::nonNull)
        .map(station -> station.content().origin())
        .distinct()
        .toList();
  }

  /** The property with this name in addresses. */
  public Optional<Sheet<Property>> property(String address) {
    return properties.stream()
        .filter(property -> property.content().address().equals(address))
        .findFirst();
  }
}
