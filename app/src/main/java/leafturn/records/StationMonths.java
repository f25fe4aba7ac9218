package leafturn.records;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads GHCN-Daily's fixed-width form, one line for a station, month and element: station in
 * columns 1-11, year 12-15, month 16-17, element 18-21, then for each of 31 days the value in five
 * columns and three flags, the first day's value in columns 22-26.
 */
final class StationMonths {
  static final Pattern START = Pattern.compile("([A-Z0-9_-]{11})(\\d{4})(\\d{2})([A-Z0-9]{4})");

  private static final int FIRST_VALUE = 21;
  private static final int VALUE_WIDTH = 5;
  private static final int DAY_WIDTH = 8;
  private static final int DAYS = 31;
  private static final Pattern WHOLE_NUMBER = Pattern.compile(" *-?\\d{1,5}");

  private final StationElements elements;
  private final Faults faults;

  StationMonths(StationElements elements, Faults faults) {
    this.elements = elements;
    this.faults = faults;
  }

  /** Hands every value of the text to the elements. */
  void read(SourceText source) {
    long line = 0;
    for (String text : (Iterable<String>) source.text().lines()::iterator) {
      line++;
      if (!text.isBlank()) {
        month(line, text);
      }
    }
  }

  private void month(long line, String text) {
    Matcher start = START.matcher(text);
    if (!start.lookingAt()) {
      faults.add(
          line, "it does not start with a station, a year, a month and an element in 21 columns.");
      return;
    }
    if (!elements.wanted(start.group(1))) {
      return;
    }
    LocalDate first =
        Dates.of(Integer.parseInt(start.group(2)), Integer.parseInt(start.group(3)), 1);
    if (first == null) {
      faults.add(
          line,
          "year %s and month %s are no month in the years %d to %d."
              .formatted(start.group(2), start.group(3), Dates.FIRST_YEAR, Dates.LAST_YEAR));
      return;
    }
    for (int day = 1; day <= DAYS; day++) {
      day(new Cell(line, text, YearMonth.from(first), start.group(4), day));
    }
  }

  private record Cell(long line, String text, YearMonth month, String element, int day) {
    int column() {
      return FIRST_VALUE + DAY_WIDTH * (day - 1);
    }

    char flag(int offset) {
      int place = column() + VALUE_WIDTH + offset;
      return place < text.length() ? text.charAt(place) : ' ';
    }
  }

  private void day(Cell cell) {
    int column = cell.column();
    if (cell.text().length() < column + VALUE_WIDTH) {
      if (cell.day() <= cell.month().lengthOfMonth()) {
        fault(cell, "the line ends before this day; a month has 31 values.");
      }
      return;
    }
    String value = cell.text().substring(column, column + VALUE_WIDTH);
    if (!WHOLE_NUMBER.matcher(value).matches()) {
      fault(cell, Faults.quoted(value) + " is not a whole number; -9999 stands for missing.");
      return;
    }
    int number = Integer.parseInt(value.strip());
    if (number == StationElements.MISSING) {
      return;
    }
    if (cell.day() > cell.month().lengthOfMonth()) {
      fault(cell, "%s has no day %d; -9999 is expected.".formatted(cell.month(), cell.day()));
      return;
    }
    elements.add(
        new StationElements.Entry(
            cell.line(),
            cell.month().atDay(cell.day()),
            cell.element(),
            number,
            cell.flag(0),
            cell.flag(1)));
  }

  private void fault(Cell cell, String sentence) {
    faults.add(
        cell.line(),
        "columns %d-%d".formatted(cell.column() + 1, cell.column() + VALUE_WIDTH),
        sentence);
  }
}
