package leafturn.reports.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import leafturn.advice.call.CallRule;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.Reason;
import leafturn.advice.call.Spread;
import leafturn.reports.ChangedCall;
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
  void aLawnWithALastSafeDayStandsOnThatDay() {
    String text =
        unfolded(
            calendarOf(
                ChangedCall.of("sallow-house-south").safeUntil(LocalDate.of(2015, 6, 1)).lawn()));
    assertThat(text)
        .contains(
            "DTSTART;VALUE=DATE:20150601",
            "South lawn\\, Sallow House: mow by this day\\, the last safe one",
            "Last safe day\\, in nearly all seasons: Mon 1 June.",
            "by Wed 3 June in half of the possible seasons");
  }

  @Test
  void aLawnToBeLeftAloneStandsOnItsLastSafeDayToo() {
    ChangedCall alone =
        ChangedCall.of("tern-cottage-back")
            .because(new Reason(CallRule.DUE.id(), "Why", "", "", "", "", true))
            .mowBy(Spread.of(new double[] {9}));
    assertThat(unfolded(calendarOf(alone.safeUntil(LocalDate.of(2015, 6, 1)).lawn())))
        .contains("DTSTART;VALUE=DATE:20150601", "mow by this day\\, the last safe one");
    assertThat(unfolded(calendarOf(alone.safeUntil(LocalDate.of(2015, 5, 29)).lawn())))
        .contains("DTSTART;VALUE=DATE:20150607", "a third of the height would come off");
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
  void aLawnToBeLeftAloneStandsOnlyOnADayToComeWithinItsSeason() {
    assertThat(calendarOf(leftAlone(CallRule.DUE, 5))).contains("DTSTART;VALUE=DATE:20150603");
    assertThat(calendarOf(leftAlone(CallRule.SEASON, 5))).doesNotContain("VEVENT");
    assertThat(calendarOf(leftAlone(CallRule.HARDLY_GROWING, 0))).doesNotContain("VEVENT");
  }

  /** The lawn that is left alone, as it would be under a rule. */
  private static LawnOnRound leftAlone(CallRule rule, double mowByDays) {
    return ChangedCall.of("tern-cottage-back")
        .because(new Reason(rule.id(), "Why", "", "", "", "", true))
        .mowBy(Spread.of(new double[] {mowByDays}))
        .lawn();
  }

  private static String calendarOf(LawnOnRound lawn) {
    return new MowByCalendar(NOW).add(ID, 1, lawn).text();
  }

  @Test
  void aCalendarWithoutLawnsIsStillOne() {
    assertThat(new MowByCalendar(NOW).text())
        .startsWith("BEGIN:VCALENDAR\r\n")
        .endsWith("END:VCALENDAR\r\n")
        // RFC 5545, section 3.6: at least one component; section 3.6.5: what a zone must have.
        .contains(
            "BEGIN:VTIMEZONE\r\nTZID:Etc/UTC\r\nBEGIN:STANDARD\r\nDTSTART:19700101T000000\r\n")
        .contains("TZOFFSETFROM:+0000\r\nTZOFFSETTO:+0000\r\n", "END:VTIMEZONE\r\n")
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
