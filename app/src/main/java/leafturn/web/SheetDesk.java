package leafturn.web;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookTitle;
import leafturn.records.book.Sheet;
import leafturn.records.book.Today;
import leafturn.records.people.Visitor;
import leafturn.records.round.BookRules;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.PhotographSheet;
import leafturn.records.sheet.Property;
import leafturn.records.sheet.WeatherStation;
import leafturn.web.form.Field.Choice;
import leafturn.web.sheet.Setting;
import leafturn.web.sheet.SheetForm;
import leafturn.web.sheet.SheetForms;
import org.jspecify.annotations.Nullable;

/** Finds sheets as far as a visitor may see them, and what their forms can choose from. */
final class SheetDesk {
  /** Kinds that are told on pages of their own. */
  static final Set<Kind<?>> OWN_PAGES =
      Set.of(Kind.ADVICE, Kind.TRIAL, Kind.TRIAL_READINGS, Kind.TRIAL_EVENT, Kind.LABORATORY);

  private final Desk desk;

  SheetDesk(Desk desk) {
    this.desk = desk;
  }

  /**
   * A sheet somebody asked for.
   *
   * @param versions all its versions, the latest first
   * @param place where it belongs
   * @param setting who reads, and what can be chosen
   * @param mayChange whether they may correct, withdraw and restore it
   */
  record Found<C extends Content>(
      List<Sheet<C>> versions, SheetPlace place, Setting setting, boolean mayChange) {
    Sheet<C> sheet() {
      return versions.get(0);
    }

    Kind<C> kind() {
      return sheet().kind();
    }

    SheetForm<C> form() {
      return SheetForms.of(kind());
    }

    /** Its document as it now stands. */
    String document() {
      return kind().write(sheet().content());
    }

    /** Its document as it stood in a version; empty where there was none such. */
    Optional<String> documentOf(int version) {
      return versions.stream()
          .filter(sheet -> sheet.version() == version)
          .findFirst()
          .map(sheet -> kind().write(sheet.content()));
    }

    String address() {
      return "/sheets/" + sheet().id();
    }
  }

  /** The sheet of the path's {@code id}. */
  Found<?> found(Context context) {
    return found(context, context.pathParam("id"));
  }

  /**
   * A sheet by its id.
   *
   * @throws Refusal when there is none or the visitor may not see it
   */
  Found<?> found(Context context, String id) {
    Visitor visitor = Guest.visitor(context);
    return desk.book()
        .read(
            reading -> {
              Sheet<?> sheet =
                  reading
                      .find(id)
                      .filter(found -> !OWN_PAGES.contains(found.kind()))
                      .orElseThrow(Refusal::notFound);
              return found(reading, visitor, sheet.kind(), id);
            });
  }

  /** As {@link #found(Context, String)}, for somebody who wants to change it. */
  Found<?> toChange(Context context, String id) {
    Found<?> found = found(context, id);
    if (!found.mayChange()) {
      throw Refusal.notAllowed();
    }
    return found;
  }

  private <C extends Content> Found<C> found(
      BookReading reading, Visitor visitor, Kind<C> kind, String id) {
    List<Sheet<C>> versions = reading.history(kind, id);
    SheetPlace place = SheetPlace.of(reading, versions.get(0));
    if (!place.mayRead(visitor) && !readsItsWeather(reading, visitor, id)) {
      throw Refusal.notFound();
    }
    return new Found<>(
        versions, place, setting(reading, visitor, place), mayChange(visitor, place, versions));
  }

  /** Who reads a property sees the station of its weather too. */
  private static boolean readsItsWeather(BookReading reading, Visitor visitor, String station) {
    return reading.all(Kind.PROPERTY).stream()
        .filter(property -> station.equals(property.content().station()))
        .anyMatch(property -> visitor.mayRead(property.id()));
  }

  /** Whoever only logs may correct what they have written themselves. */
  private static <C extends Content> boolean mayChange(
      Visitor visitor, SheetPlace place, List<Sheet<C>> versions) {
    if (place.mayChange(visitor)) {
      return true;
    }
    Sheet<Property> property = place.property();
    String author = versions.get(versions.size() - 1).writtenBy();
    return versions.get(0).kind() == Kind.LOG
        && property != null
        && visitor.mayLog(property.id())
        && author.equals(visitor.person().name());
  }

  /** What forms about a place can choose from. */
  Setting setting(BookReading reading, Visitor visitor, SheetPlace place) {
    Map<String, String> names = new HashMap<>();
    List<Choice> stations = new ArrayList<>();
    for (Sheet<WeatherStation> station : reading.all(Kind.STATION)) {
      if (visitor.mayReadAll() || isOf(station, place.property())) {
        stations.add(new Choice(station.id(), station.content().name()));
        names.put(station.id(), station.content().name());
      }
    }
    List<Choice> beds = new ArrayList<>();
    List<Choice> photographs = new ArrayList<>();
    Sheet<Property> property = place.property();
    if (property != null) {
      names.put(property.id(), property.content().name());
      collect(reading, property.id(), names, photographs);
      for (var bed : reading.ofProperty(Kind.BED, property.id())) {
        names.put(bed.id(), bed.content().name());
        if (place.lawn() == null) {
          beds.add(new Choice(bed.id(), bed.content().name()));
        }
      }
    }
    return new Setting(
        visitor.person().units(),
        today(reading, place),
        stations,
        beds,
        photographs,
        names,
        BookRules.of(reading).third(),
        property != null && property.content().latitudeDeg() < 0);
  }

  private static boolean isOf(Sheet<WeatherStation> station, @Nullable Sheet<Property> property) {
    return property != null && station.id().equals(property.content().station());
  }

  private static void collect(
      BookReading reading, String property, Map<String, String> names, List<Choice> photographs) {
    List<Sheet<PhotographSheet>> all =
        new ArrayList<>(reading.ofProperty(Kind.PHOTOGRAPH, property));
    for (var lawn : reading.ofProperty(Kind.LAWN, property)) {
      names.put(lawn.id(), lawn.content().name());
      all.addAll(reading.ofLawn(Kind.PHOTOGRAPH, lawn.id()));
    }
    for (var heap : reading.ofProperty(Kind.HEAP, property)) {
      names.put(heap.id(), heap.content().name());
    }
    Map<LocalDate, Integer> ofDay = new HashMap<>();
    for (Sheet<PhotographSheet> photograph : all) {
      String caption = photograph.content().caption();
      LocalDate day = photograph.content().day();
      int number = ofDay.merge(day, 1, Integer::sum);
      String name = day + ", no. " + number + (caption == null ? "" : ", " + caption);
      names.put(photograph.id(), "photograph of " + name);
      photographs.add(new Choice(photograph.id(), name));
    }
  }

  private LocalDate today(BookReading reading, SheetPlace place) {
    return Today.of(BookTitle.of(reading), desk.clock()).in(place.zone(desk.clock().getZone()));
  }
}
