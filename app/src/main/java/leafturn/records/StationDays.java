package leafturn.records;

import java.time.LocalDate;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Reads GHCN-Daily's form with one value a line and no header: station, date as YYYYMMDD, element,
 * value, measurement flag, quality flag, source flag, time of observation as HHMM.
 */
final class StationDays {
  static final Pattern START = Pattern.compile("[A-Z0-9_-]{11},\\d{8},[A-Z0-9]{4},");

  private static final Pattern STATION = Pattern.compile("[A-Z0-9_-]{11}");
  private static final Pattern DATE = Pattern.compile("\\d{8}");
  private static final Pattern ELEMENT = Pattern.compile("[A-Z0-9]{4}");
  private static final Pattern WHOLE_NUMBER = Pattern.compile("-?\\d{1,6}");
  private static final int LEAST_FIELDS = 4;
  private static final int MOST_FIELDS = 8;
  private static final int OBSERVED_AT = 7;
  private static final String EARLIEST_MORNING = "0400";
  private static final String LATEST_MORNING = "1000";

  private final StationElements elements;
  private final Faults faults;
  private int rainReadings;
  private int morningReadings;

  StationDays(StationElements elements, Faults faults) {
    this.elements = elements;
    this.faults = faults;
  }

  /** Hands every value of the text to the elements. */
  void read(SourceText source) {
    long line = 0;
    for (String text : (Iterable<String>) source.text().lines()::iterator) {
      line++;
      if (!text.isBlank()) {
        entry(line, text.split(",", -1));
      }
    }
  }

  @SuppressWarnings("ShortCircuitBoolean") // every fault of the line is told
  private void entry(long line, String[] fields) {
    if (fields.length < LEAST_FIELDS || fields.length > MOST_FIELDS) {
      faults.add(
          line,
          "it has %d fields; station, date, element, value and up to four flags are expected."
              .formatted(fields.length));
      return;
    }
    if (!formed(line, "station", fields[0], STATION, "eleven capitals and digits")
        || !elements.wanted(fields[0])) {
      return;
    }
    boolean readable =
        formed(line, "date", fields[1], DATE, "YYYYMMDD")
            & formed(line, "element", fields[2], ELEMENT, "four capitals such as TMAX")
            & formed(
                line, "value", fields[3], WHOLE_NUMBER, "a whole number in the element's unit");
    if (readable) {
      value(line, fields);
    }
  }

  private void value(long line, String[] fields) {
    LocalDate day =
        Dates.of(
            Integer.parseInt(fields[1].substring(0, 4)),
            Integer.parseInt(fields[1].substring(4, 6)),
            Integer.parseInt(fields[1].substring(6)));
    if (day == null) {
      faults.add(
          line,
          "date",
          "%s is no day in the years %d to %d."
              .formatted(Faults.quoted(fields[1]), Dates.FIRST_YEAR, Dates.LAST_YEAR));
      return;
    }
    int value = Integer.parseInt(fields[3]);
    if (value != StationElements.MISSING) {
      noteTime(fields);
      elements.add(
          new StationElements.Entry(line, day, fields[2], value, flag(fields, 4), flag(fields, 5)));
    }
  }

  private static char flag(String[] fields, int place) {
    return place < fields.length && !fields[place].isBlank()
        ? fields[place].strip().charAt(0)
        : ' ';
  }

  private void noteTime(String[] fields) {
    if (!fields[2].equals("PRCP")
        || fields.length <= OBSERVED_AT
        || fields[OBSERVED_AT].isBlank()) {
      return;
    }
    rainReadings++;
    String time = fields[OBSERVED_AT];
    if (time.compareTo(EARLIEST_MORNING) >= 0 && time.compareTo(LATEST_MORNING) <= 0) {
      morningReadings++;
    }
  }

  private boolean formed(long line, String field, String text, Pattern form, String right) {
    if (form.matcher(text).matches()) {
      return true;
    }
    faults.add(line, field, Faults.quoted(text) + " is not usable; give " + right + ".");
    return false;
  }

  /** What is worth saying about the times of observation; often nothing. */
  List<String> notes() {
    return morningReadings * 2 > rainReadings
        ? List.of(
            "Rain was mostly read in the morning, so it fell for the greater part on the day"
                + " before; it is not shifted.")
        : List.of();
  }
}
