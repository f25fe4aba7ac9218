package leafturn.web;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.Property;
import leafturn.web.form.Field.Choice;
import org.jspecify.annotations.Nullable;

/**
 * Where an import begins: what can be imported, and for what.
 *
 * @param lawns that a log can belong to
 * @param stations that weather can belong to
 * @param lawn id of the lawn that is chosen beforehand; may be empty
 * @param station id of the station that is chosen beforehand; may be empty
 * @param faults what is wrong with the file that was sent
 */
public record ImportStart(
    List<Choice> lawns, List<Choice> stations, String lawn, String station, List<String> faults) {

  /**
   * @param asked values of the page's address by name, null where there is none
   */
  static ImportStart of(
      BookReading book, Function<String, @Nullable String> asked, List<String> faults) {
    List<Choice> lawns = new ArrayList<>();
    for (Sheet<Property> property : book.all(Kind.PROPERTY)) {
      book.ofProperty(Kind.LAWN, property.id())
          .forEach(
              lawn ->
                  lawns.add(
                      new Choice(
                          lawn.id(), lawn.content().name() + ", " + property.content().name())));
    }
    List<Choice> stations =
        book.all(Kind.STATION).stream()
            .map(station -> new Choice(station.id(), station.content().name()))
            .toList();
    return new ImportStart(
        lawns, stations, orEmpty(asked.apply("lawn")), orEmpty(asked.apply("station")), faults);
  }

  /** What a kept file is for, in words; empty where its rows say so themselves. */
  static String nameOf(BookReading book, KeptFile file) {
    if (file.target().isEmpty()) {
      return "";
    }
    if (file.kind() == ImportKind.WEATHER) {
      return book.find(Kind.STATION, file.target())
          .map(station -> station.content().name())
          .orElse("");
    }
    return book.find(Kind.LAWN, file.target())
        .map(
            lawn ->
                lawn.content().name()
                    + book.find(Kind.PROPERTY, lawn.content().property())
                        .map(property -> ", " + property.content().name())
                        .orElse(""))
        .orElse("");
  }

  private static String orEmpty(@Nullable String text) {
    return text == null ? "" : text;
  }
}
