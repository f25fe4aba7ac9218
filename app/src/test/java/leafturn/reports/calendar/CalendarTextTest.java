package leafturn.reports.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The rules of RFC 5545 for the text of a calendar; each test names the section it holds to. */
class CalendarTextTest {
  private static final Instant MADE_AT = Instant.parse("2015-05-29T06:07:08.9Z");

  /** Section 3.1: a line is at most 75 octets long, without its end. */
  @ParameterizedTest
  @MethodSource("longTexts")
  void noLineIsLongerThan75Octets(String text) {
    for (String line : folded("SUMMARY", text).split("\r\n", -1)) {
      assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75);
    }
  }

  /** Section 3.1: folding puts a line's end and one blank between two characters, and no more. */
  @ParameterizedTest
  @MethodSource("longTexts")
  void unfoldingGivesTheLineBack(String text) {
    String line = folded("SUMMARY", text);
    assertThat(unfolded(line)).isEqualTo("SUMMARY:" + text + "\r\n");
  }

  /** Section 3.1: a character of several octets may be cut by others; we never cut one. */
  @ParameterizedTest
  @MethodSource("longTexts")
  void everyLineIsWholeCharacters(String text) {
    for (String line : folded("SUMMARY", text).split("\r\n", -1)) {
      byte[] octets = line.getBytes(StandardCharsets.UTF_8);
      assertThat(new String(octets, StandardCharsets.UTF_8))
          .isEqualTo(line)
          .doesNotContain("\ufffd");
      assertThat(line).doesNotMatch(".*[\ud800-\udbff]$").doesNotMatch("^ ?[\udc00-\udfff].*");
    }
  }

  @Test
  void aLineIsFoldedAsLateAsItCanBe() {
    String[] lines = folded("X", "a".repeat(200)).split("\r\n");
    assertThat(lines).extracting(String::length).containsExactly(75, 75, 54);
  }

  static Stream<String> longTexts() {
    SplittableRandom random = new SplittableRandom(5545);
    Stream<String> chosen =
        Stream.of(
            "",
            "a".repeat(67),
            "a".repeat(68),
            "é".repeat(60),
            "a" + "é".repeat(60),
            "草".repeat(60),
            "aa" + "草".repeat(60),
            "🌱".repeat(60),
            "a🌱".repeat(60),
            "e\u0301".repeat(60));
    Stream<String> drawn =
        Stream.generate(
                () ->
                    random
                        .ints(random.nextInt(400), 0, 4)
                        .mapToObj(i -> List.of("a", "é", "草", "🌱").get(i))
                        .reduce("", String::concat))
            .limit(200);
    return Stream.concat(chosen, drawn);
  }

  /** Section 3.3.11: backslash, semicolon, comma and a line's end are escaped, a colon is not. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "a;b|a\\;b",
        "a,b|a\\,b",
        "a\\b|a\\\\b",
        "a:b|a:b",
        "\"a\"\"b\"|\"a\"\"b\"",
        "\\n|\\\\n"
      })
  void textIsEscaped(String text, String escaped) {
    assertThat(new ContentLines().text("X", text)).hasToString("X:" + escaped + "\r\n");
  }

  /**
   * Sections 3.1 and 3.3.11: a line's end inside a text, however it is written, is no line's end.
   */
  @Test
  void noTextCanBeginALineOfItsOwn() {
    String hostile = "a\r\nATTENDEE:x\nb\rc\u0000d\u0007e\u0085f\tg\ud800h";
    assertThat(new ContentLines().text("X", hostile))
        .hasToString("X:a\\nATTENDEE:x\\nb\\ncdef gh\r\n");
  }

  /** Sections 3.4, 3.6 and 3.7: one object with its version and product, and events within. */
  @Test
  void theObjectHasWhatItMustHave() {
    List<String> lines = lines(calendar());
    assertThat(lines).startsWith("BEGIN:VCALENDAR").endsWith("END:VCALENDAR");
    assertThat(lines).containsOnlyOnce("VERSION:2.0", "CALSCALE:GREGORIAN");
    assertThat(lines).filteredOn(line -> line.startsWith("PRODID:")).hasSize(1);
  }

  /** Section 3.6.1: UID and DTSTAMP are required, and DTSTART where there is no METHOD. */
  @Test
  void anEventHasWhatItMustHave() {
    List<String> lines = lines(calendar());
    int begin = lines.indexOf("BEGIN:VEVENT");
    List<String> event = lines.subList(begin, lines.indexOf("END:VEVENT") + 1);
    assertThat(event)
        .containsOnlyOnce(
            "UID:6f1c0f4e-0000-4000-8000-000000000001",
            "DTSTAMP:20150529T060708Z",
            "LAST-MODIFIED:20150529T060708Z",
            "SEQUENCE:12",
            "DTSTART;VALUE=DATE:20150603",
            "DTEND;VALUE=DATE:20150604",
            "TRANSP:TRANSPARENT");
    assertThat(lines).noneMatch(line -> line.startsWith("METHOD"));
  }

  /** Sections 3.3.4 and 3.6.5: a DATE is no time, so that the calendar needs no time zone. */
  @Test
  void daysAreDatesWithoutATimeZone() {
    assertThat(calendar()).doesNotContain("TZID", "VTIMEZONE", "DTSTART:");
  }

  /** Section 3.3.8: an INTEGER ends at 2147483647. */
  @Test
  void aSequenceNeverRunsOutOfItsRange() {
    assertThat(CalendarText.of("x", List.of(event(Long.MAX_VALUE))))
        .contains("SEQUENCE:2147483647\r\n");
  }

  /** Section 3.1: every line ends with a carriage return and a line feed, the last one too. */
  @Test
  void everyLineEndsAsItMust() {
    assertThat(calendar()).endsWith("\r\n").doesNotContainPattern("[^\r]\n|\r[^\n]");
  }

  private static String calendar() {
    return CalendarText.of("Mow-by days", List.of(event(12)));
  }

  private static DayEvent event(long sequence) {
    return new DayEvent(
        "6f1c0f4e-0000-4000-8000-000000000001",
        sequence,
        MADE_AT,
        LocalDate.of(2015, 6, 3),
        "South lawn, Sallow House: mow by this day",
        "Mow tomorrow; return the clippings.\nA third would come off by 3 June.");
  }

  private static String folded(String name, String value) {
    return new ContentLines().line(name, value).toString();
  }

  private static String unfolded(String text) {
    return text.replace("\r\n ", "");
  }

  private static List<String> lines(String calendar) {
    return List.of(unfolded(calendar).split("\r\n"));
  }
}
