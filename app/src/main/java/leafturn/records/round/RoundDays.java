package leafturn.records.round;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import leafturn.records.book.Today;
import leafturn.records.sheet.Property;

/** Which day it is: the book's own where it has one, else that of each property's time zone. */
final class RoundDays {
  private final Clock clock;

  /**
   * @param clock tells the time; its zone is that of a book without properties
   */
  RoundDays(Clock clock) {
    this.clock = clock;
  }

  /** The day of a lawn. */
  LocalDate of(Register register, PlacedLawn lawn) {
    return of(register, lawn.property().content());
  }

  /** The day of a round: that of its first property. */
  LocalDate of(Register register) {
    return register.properties().stream()
        .findFirst()
        .map(property -> of(register, property.content()))
        .orElseGet(() -> of(register, clock.getZone()));
  }

  private LocalDate of(Register register, Property property) {
    return of(register, ZoneId.of(property.timeZone()));
  }

  private LocalDate of(Register register, ZoneId zone) {
    return Today.of(register.title(), clock).in(zone);
  }
}
