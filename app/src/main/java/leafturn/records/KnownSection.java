package leafturn.records;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.HashSet;
import java.util.Set;
import leafturn.advice.call.Circumstances;
import leafturn.advice.call.Circumstances.HeapHeat;
import leafturn.advice.call.Circumstances.Wishes;
import leafturn.advice.call.Place;
import leafturn.advice.call.Visits;
import leafturn.advice.call.WateringLimits;
import org.jspecify.annotations.Nullable;

/** Reads what a lawn description says beyond what the model needs, its object {@code known}. */
final class KnownSection {
  private final JsonObject known;

  KnownSection(JsonObject known) {
    this.known = known;
  }

  /** What is known; whatever is left out is not. */
  Circumstances read() {
    Circumstances circumstances =
        Circumstances.NONE
            .withPlace(place())
            .withVisits(visits())
            .withWateringLimits(known.has("watering") ? watering() : WateringLimits.NONE)
            .withWishes(
                new Wishes(
                    Boolean.TRUE.equals(known.flag("noClippings")),
                    orElse(Choice.read(known, "heapHeat", HeapHeat.class), HeapHeat.NOT_KNOWN)));
    known.refuseOthers();
    return circumstances;
  }

  private Place place() {
    Double slope = known.number("slopePercent", 0, 100, "%");
    return new Place(
        slope == null ? Double.NaN : slope,
        orElse(Choice.read(known, "deck", Place.Deck.class), Place.Deck.NOT_KNOWN),
        orElse(
            Choice.read(known, "annualBluegrass", Place.AnnualBluegrass.class),
            Place.AnnualBluegrass.NOT_KNOWN),
        Boolean.TRUE.equals(known.flag("newlySeeded")));
  }

  private static <T> T orElse(@Nullable T value, T otherwise) {
    return value == null ? otherwise : value;
  }

  private Visits visits() {
    Set<LocalDate> dates = new HashSet<>(known.list("mowingDates").dates());
    return new Visits(new HashSet<>(known.list("mowingDays").choices(DayOfWeek.class)), dates);
  }

  private WateringLimits watering() {
    JsonObject watering = known.object("watering");
    boolean banned = Boolean.TRUE.equals(watering.flag("banned"));
    Set<DayOfWeek> days = new HashSet<>(watering.list("days").choices(DayOfWeek.class));
    LocalTime from = time(watering, "from");
    LocalTime to = time(watering, "to");
    if (watering.has("from") != watering.has("to")) {
      watering.missing(watering.has("from") ? "to" : "from", "the other end of the hours as 21:00");
    }
    watering.refuseOthers();
    boolean whole = from != null && to != null;
    return new WateringLimits(banned, days, whole ? from : null, whole ? to : null);
  }

  private static @Nullable LocalTime time(JsonObject json, String name) {
    String text = json.text(name);
    if (text == null) {
      return null;
    }
    try {
      return LocalTime.parse(text);
    } catch (DateTimeParseException e) {
      json.fault(name, Faults.quoted(text) + " is not a time; write hours and minutes as 07:30.");
      return null;
    }
  }
}
