package leafturn.reports.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import leafturn.advice.call.LawnOnRound;
import leafturn.web.SampleRound;
import org.junit.jupiter.api.Test;

class MowByCalendarTest {
  private static final String ID = "6f1c0f4e-0000-4000-8000-000000000001";
  private static final Instant NOW = Instant.parse("2015-05-29T06:00:00Z");

  @Test
  void aLawnStandsOnTheDayByWhichItWantsMowing() {
    String text = unfolded(calendarOf("sallow-house-south", 3));
    assertThat(text)
        .contains(
            "DTSTART;VALUE=DATE:20150603",
            "SUMMARY:South lawn\\, Sallow House: mow by this day",
            "Mow tomorrow once it is dry\\, and return the clippings.",
            "by Wed 3 June in half of the possible seasons (1–5\u00a0June in eight of ten)",
            "made for Friday 29 May 2015");
  }

  @Test
  void theEventOfALawnIsAlwaysTheSameOneAndEachChangeCountsUp() {
    String before = calendarOf("sallow-house-south", 3);
    String after = calendarOf("sallow-house-south", 4);
    assertThat(first("UID:(.*)\r", after)).isEqualTo(first("UID:(.*)\r", before)).isEqualTo(ID);
    assertThat(Long.parseLong(first("SEQUENCE:(.*)\r", after)))
        .isGreaterThan(Long.parseLong(first("SEQUENCE:(.*)\r", before)));
  }

  @Test
  void aCalendarWithoutLawnsIsStillOne() {
    assertThat(new MowByCalendar(NOW).text())
        .startsWith("BEGIN:VCALENDAR\r\n")
        .endsWith("END:VCALENDAR\r\n")
        .doesNotContain("VEVENT");
  }

  private static String calendarOf(String slug, long revision) {
    LawnOnRound lawn = SampleRound.get().lawn(slug).orElseThrow();
    return new MowByCalendar(NOW).add(ID, revision, lawn).text();
  }

  private static String unfolded(String text) {
    return text.replace("\r\n ", "");
  }

  private static String first(String pattern, String text) {
    return Pattern.compile(pattern)
        .matcher(text)
        .results()
        .findFirst()
        .map((MatchResult match) -> match.group(1))
        .orElse("");
  }
}
