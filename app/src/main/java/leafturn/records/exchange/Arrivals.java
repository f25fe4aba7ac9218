package leafturn.records.exchange;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.UUID;
import leafturn.quantity.Units;
import leafturn.records.Sha256;
import leafturn.records.book.BookWriting;
import leafturn.records.book.StationDay;
import leafturn.records.book.StationDays;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;

/**
 * What a table would add to the book.
 *
 * @param sheets new sheets, those that others rest on first
 * @param station id of the station that the days belong to; empty where there are none
 * @param days days of weather to put into its record
 */
public record Arrivals(List<NewSheet<?>> sheets, String station, List<StationDay> days) {
  public Arrivals {
    sheets = List.copyOf(sheets);
    days = List.copyOf(days);
  }

  /**
   * A sheet to add: one that the book can read again.
   *
   * @param words what it says, in a line
   */
  public record NewSheet<C extends Content>(Kind<C> kind, String id, C content, String words) {
    /**
     * @throws leafturn.records.InputException when a reader of its kind would refuse it
     */
    public NewSheet {
      kind.checked(content);
    }

    private void write(BookWriting writing) {
      writing.add(kind, id, content);
    }

    private String meaning() {
      return kind.name() + " " + id + " " + kind.write(content);
    }
  }

  /** Sheets alone. */
  public static Arrivals of(List<NewSheet<?>> sheets) {
    return new Arrivals(sheets, "", List.of());
  }

  /** How many things would be added. */
  public int count() {
    return sheets.size() + days.size();
  }

  /** Writes them into the book. */
  public void write(BookWriting writing) {
    sheets.forEach(sheet -> sheet.write(writing));
    if (!days.isEmpty()) {
      StationDays.put(writing, station, days);
    }
  }

  /** A digest by which somebody who has seen them says that just these are to be added. */
  public String digest() {
    MessageDigest digest = Sha256.begin();
    sheets.forEach(sheet -> digest.update(bytes(sheet.meaning())));
    digest.update(bytes(station));
    days.forEach(day -> digest.update(bytes(StationDayWords.of(day, Units.METRIC))));
    return HexFormat.of().formatHex(digest.digest(), 0, 16);
  }

  /** The id of a sheet that is known by what it says: the same each time the same arrives. */
  public static String idOf(String what) {
    return UUID.nameUUIDFromBytes(bytes("leafturn " + what)).toString();
  }

  private static byte[] bytes(String text) {
    return (text + "\n").getBytes(StandardCharsets.UTF_8);
  }
}
