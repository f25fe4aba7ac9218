package leafturn.web;

import leafturn.records.book.BookReading;
import leafturn.records.sheet.Kind;

/**
 * What was imported, and where to see it.
 *
 * @param headline what was added, a sentence
 * @param follows what follows from it, a sentence
 * @param place address of the page that shows it
 * @param placeName what to call that page
 */
public record ImportDone(String headline, String follows, String place, String placeName) {

  static ImportDone of(BookReading book, KeptFile file) {
    String headline = file.added() + " imported.";
    String name = ImportStart.nameOf(book, file);
    String follows = follows(file.kind());
    return switch (file.kind()) {
      case TRIAL -> new ImportDone(headline, follows, "/trials", "the trials");
      case PROPERTIES -> new ImportDone(headline, follows, "/lawns", "the lawns");
      case READINGS ->
          new ImportDone(
              headline, follows, "/trials/" + file.target() + "/readings", "the readings");
      case WEATHER -> new ImportDone(headline, follows, "/weather/" + file.target(), name);
      case LOG ->
          book.find(Kind.LAWN, file.target())
              .map(
                  lawn ->
                      new ImportDone(headline, follows, "/lawns/" + lawn.content().address(), name))
              .orElse(new ImportDone(headline, follows, "/lawns", "the lawns"));
    };
  }

  private static String follows(ImportKind kind) {
    return switch (kind) {
      case TRIAL -> "It changes no advice; its pages show what came with it.";
      case READINGS -> "The findings of the trial follow what came in.";
      case LOG, PROPERTIES, WEATHER -> "The advice follows what came in.";
    };
  }
}
