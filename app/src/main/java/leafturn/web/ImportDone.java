package leafturn.web;

import leafturn.records.book.BookReading;
import leafturn.records.sheet.Kind;

/**
 * What was imported, and where to see it.
 *
 * @param headline what was added, a sentence
 * @param place address of the page that shows it
 * @param placeName what to call that page
 */
public record ImportDone(String headline, String place, String placeName) {

  static ImportDone of(BookReading book, KeptFile file) {
    String headline = file.added() + " imported.";
    String name = ImportStart.nameOf(book, file);
    return switch (file.kind()) {
      case TRIAL -> new ImportDone(headline, "/trials", "the trials");
      case PROPERTIES -> new ImportDone(headline, "/lawns", "the lawns");
      case READINGS ->
          new ImportDone(headline, "/trials/" + file.target() + "/readings", "the readings");
      case WEATHER -> new ImportDone(headline, "/weather/" + file.target(), name);
      case LOG ->
          book.find(Kind.LAWN, file.target())
              .map(lawn -> new ImportDone(headline, "/lawns/" + lawn.content().address(), name))
              .orElse(new ImportDone(headline, "/lawns", "the lawns"));
    };
  }
}
