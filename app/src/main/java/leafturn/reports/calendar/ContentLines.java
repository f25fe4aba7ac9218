package leafturn.reports.calendar;

import java.nio.charset.StandardCharsets;

/**
 * Lines of an iCalendar object: folded so that no line is longer than 75 octets, each ended by a
 * carriage return and a line feed (RFC 5545, section 3.1).
 */
final class ContentLines {
  private static final int MOST_OCTETS = 75;
  private static final String LINE_END = "\r\n";

  private final StringBuilder text = new StringBuilder();

  /** A line whose value is written as it is: a number, a date, a name. */
  ContentLines line(String name, String value) {
    int octets = 0;
    String unfolded = name + ":" + value;
    for (int i = 0; i < unfolded.length(); ) {
      // A character is never cut in two, whatever its octets.
      String character = Character.toString(unfolded.codePointAt(i));
      int more = character.getBytes(StandardCharsets.UTF_8).length;
      if (octets + more > MOST_OCTETS) {
        text.append(LINE_END).append(' ');
        octets = 1;
      }
      text.append(character);
      octets += more;
      i += character.length();
    }
    text.append(LINE_END);
    return this;
  }

  /** A line whose value is TEXT and may hold anything (RFC 5545, section 3.3.11). */
  ContentLines text(String name, String value) {
    return line(name, escaped(value));
  }

  /** Control characters other than a line's end have no place in TEXT and are left out. */
  private static String escaped(String value) {
    StringBuilder escaped = new StringBuilder();
    value
        .replace("\r\n", "\n")
        .replace('\r', '\n')
        .codePoints()
        .forEach(
            character -> {
              switch (character) {
                case '\\', ';', ',' -> escaped.append('\\').appendCodePoint(character);
                case '\n' -> escaped.append("\\n");
                case '\t' -> escaped.append(' ');
                default -> {
                  if (!Character.isISOControl(character) && !isHalf(character)) {
                    escaped.appendCodePoint(character);
                  }
                }
              }
            });
    return escaped.toString();
  }

  /** Half of a pair stands for no character and has no octets. */
  private static boolean isHalf(int character) {
    return character >= Character.MIN_SURROGATE && character <= Character.MAX_SURROGATE;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
