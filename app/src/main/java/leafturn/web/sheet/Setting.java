package leafturn.web.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import leafturn.quantity.Units;
import leafturn.reports.UnitWords;
import leafturn.web.form.Field.Choice;

/**
 * Who a form is for, and what it can choose from.
 *
 * @param units the reader's units
 * @param today the day it is where the sheet belongs
 * @param stations weather stations of the book, by id
 * @param beds beds of the property, by id
 * @param photographs photographs of the property and its lawns, by id
 * @param names what other sheets are called, by id
 * @param third largest share of the height that one cut should take by the rules of the book, in
 *     words: "a third" unless somebody has set another
 * @param southern true where the sheet belongs south of the equator
 */
public record Setting(
    Units units,
    LocalDate today,
    List<Choice> stations,
    List<Choice> beds,
    List<Choice> photographs,
    Map<String, String> names,
    String third,
    boolean southern) {
  public Setting {
    stations = List.copyOf(stations);
    beds = List.copyOf(beds);
    photographs = List.copyOf(photographs);
    names = Map.copyOf(names);
  }

  /** Quantities in the reader's units. */
  public UnitWords words() {
    return new UnitWords(units);
  }
}
