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
 * @param trials that take readings
 * @param laboratories whose mapping can read a file
 * @param chosen what is chosen beforehand
 * @param refused what the file that was sent should have held, or null
 * @param faults what is wrong with that file
 */
public record ImportStart(
    List<Choice> lawns,
    List<Choice> stations,
    List<Choice> trials,
    List<Choice> laboratories,
    Chosen chosen,
    @Nullable ImportKind refused,
    List<String> faults) {

  /**
   * What is chosen beforehand, by id; empty for nothing.
   *
   * @param lawn id of a lawn
   * @param station id of a station
   * @param trial id of a trial
   * @param laboratory id of a laboratory
   */
  public record Chosen(String lawn, String station, String trial, String laboratory) {}

  /** What is wrong with a file that should have held this; empty where nothing is. */
  public List<String> faultsOf(ImportKind kind) {
    return kind == refused ? faults : List.of();
  }

  /**
   * @param asked what was chosen by the names of the fields, null where nothing was
   * @param refused what the file that was sent should have held, or null
   * @param faults what is wrong with that file
   */
  static ImportStart of(
      BookReading book,
      Function<String, @Nullable String> asked,
      @Nullable ImportKind refused,
      List<String> faults) {
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
    List<Choice> laboratories =
        book.all(Kind.LABORATORY).stream()
            .map(laboratory -> new Choice(laboratory.id(), laboratory.content().name()))
            .toList();
    Chosen chosen =
        new Chosen(
            orEmpty(asked.apply("lawn")),
            orEmpty(asked.apply("station")),
            orEmpty(asked.apply("trial")),
            orEmpty(asked.apply("laboratory")));
    return new ImportStart(lawns, stations, trials(book), laboratories, chosen, refused, faults);
  }

  /** Those that are frozen and have not ended. */
  private static List<Choice> trials(BookReading book) {
    return book.all(Kind.TRIAL).stream()
        .filter(trial -> trial.content().frozen() != null && trial.content().ended() == null)
        .map(trial -> new Choice(trial.id(), trial.content().name()))
        .toList();
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
    if (file.kind() == ImportKind.READINGS) {
      return book.find(Kind.TRIAL, file.target()).map(trial -> trial.content().name()).orElse("");
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
