package leafturn.reports.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;

/** Writes events as an iCalendar object (RFC 5545) that a calendar program subscribes to. */
final class CalendarText {
  /** How often a program may ask again; nothing here changes faster than a person mows. */
  private static final String ASK_AGAIN_AFTER = "PT3H";

  private static final DateTimeFormatter INSTANT =
      DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

  /** Largest number that SEQUENCE holds, an INTEGER of 32 bits. */
  private static final long MOST = Integer.MAX_VALUE;

  private CalendarText() {}

  /**
   * The calendar.
   *
   * @param name what a calendar program shows as its name
   */
  static String of(String name, List<DayEvent> events) {
    ContentLines lines =
        new ContentLines()
            .line("BEGIN", "VCALENDAR")
            .line("VERSION", "2.0")
            .line("PRODID", "-//Leafturn//Mow-by days//EN")
            .line("CALSCALE", "GREGORIAN")
            .text("NAME", name)
            .line("REFRESH-INTERVAL;VALUE=DURATION", ASK_AGAIN_AFTER);
    if (events.isEmpty()) {
      addZone(lines);
    }
    events.forEach(event -> add(lines, event));
    return lines.line("END", "VCALENDAR").toString();
  }

  /**
   * A calendar has at least one component (RFC 5545, section 3.6), and a zone that nothing refers
   * to shows nowhere.
   */
  private static void addZone(ContentLines lines) {
    lines
        .line("BEGIN", "VTIMEZONE")
        .line("TZID", "Etc/UTC")
        .line("BEGIN", "STANDARD")
        .line("DTSTART", "19700101T000000")
        .line("TZOFFSETFROM", "+0000")
        .line("TZOFFSETTO", "+0000")
        .line("TZNAME", "UTC")
        .line("END", "STANDARD")
        .line("END", "VTIMEZONE");
  }

  private static void add(ContentLines lines, DayEvent event) {
    lines
        .line("BEGIN", "VEVENT")
        .text("UID", event.uid())
        .line("DTSTAMP", instant(event.madeAt()))
        .line("LAST-MODIFIED", instant(event.madeAt()))
        .line("SEQUENCE", Long.toString(Math.min(event.sequence(), MOST)))
        .line("DTSTART;VALUE=DATE", date(event.day()))
        .line("DTEND;VALUE=DATE", date(event.day().plusDays(1)))
        .text("SUMMARY", event.summary())
        .text("DESCRIPTION", event.description())
        .line("CLASS", "PRIVATE")
        .line("TRANSP", "TRANSPARENT")
        .line("END", "VEVENT");
  }

  private static String instant(Instant instant) {
    return INSTANT.format(instant);
  }

  private static String date(LocalDate day) {
    return DateTimeFormatter.BASIC_ISO_DATE.format(day);
  }
}
