package leafturn.cli;

import leafturn.records.archive.Manifest;

/** Tells in a line how much an archive holds. */
final class BookCounts {
  private BookCounts() {}

  static String of(Manifest manifest) {
    return "%d sheets, %d versions, %d days of weather, %d photographs, %d people"
        .formatted(
            manifest.count("sheets"),
            manifest.count("versions"),
            manifest.count("weatherDays"),
            manifest.count("photographs"),
            manifest.count("people"));
  }
}
