package leafturn.web;

import java.util.List;
import java.util.Locale;
import leafturn.records.exchange.Column;
import leafturn.records.exchange.LogColumns;
import leafturn.records.exchange.PropertyColumns;
import leafturn.records.exchange.ReadingColumns;
import leafturn.records.exchange.WeatherColumns;

/** What can be imported. */
public enum ImportKind {
  LOG("Past log", "entry", "entries", "lawn", LogColumns.ALL),
  PROPERTIES("Properties and lawns", "sheet", "sheets", "", PropertyColumns.ALL),
  WEATHER("Daily weather", "day", "days", "station", WeatherColumns.ALL),
  READINGS("Readings of a trial", "reading", "readings", "trial", ReadingColumns.ALL),
  TRIAL("A whole trial", "trial", "trials", "", List.of());

  private final String title;
  private final String one;
  private final String many;
  private final String target;
  private final List<Column> columns;

  ImportKind(String title, String one, String many, String target, List<Column> columns) {
    this.title = title;
    this.one = one;
    this.many = many;
    this.target = target;
    this.columns = columns;
  }

  /** What to call it. */
  public String title() {
    return title;
  }

  /** A number of what it adds: "1 entry", "12 days". */
  public String count(int number) {
    return "%,d %s".formatted(number, number == 1 ? one : many);
  }

  /** The field that says what a file of it is for; empty where its rows say so themselves. */
  String target() {
    return target;
  }

  /** Id of the field for its file. */
  public String fileId() {
    return name().toLowerCase(Locale.ROOT) + "-file";
  }

  /** The columns its tables may have. */
  List<Column> columns() {
    return columns;
  }
}
