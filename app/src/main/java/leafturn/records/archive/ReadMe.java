package leafturn.records.archive;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** Tells whoever opens an archive without this program what lies in it. */
final class ReadMe {
  private static final String TEXT =
      """
      This is a whole Leafturn book, written in open formats so that it can be read without Leafturn.

      archive.json      what made this archive, when, and the size and SHA-256 of every file
      book.json         whose book it is
      people.jsonl      people, their roles, units and the properties shared with them; no passwords
      sheets/           one file for each kind of sheet: a line of JSON for each sheet with all its
                        versions, the last of which counts unless it is withdrawn
      weather/          daily weather by station: mm, degrees C, m/s, %, MJ/m2; empty = not measured
      photographs/      pictures, named by the id of their sheet
      outlines/         outlines of lawns and beds as GeoJSON; repeats sheets/, which alone have
                        those drawn without a place on the earth
      logs/             logs as CSV, one file for each lawn; repeats sheets/
      damaged/          only of a damaged book: the raw text of each sheet that could not be kept as
                        one, with the reason in its first line; an import passes over it

      All text is UTF-8, times are UTC, units are SI. To read it into Leafturn again:

        leafturn book import --book NEW-FOLDER ARCHIVE.zip
      """;

  private ReadMe() {}

  static long writeTo(OutputStream out) throws IOException {
    out.write(TEXT.getBytes(StandardCharsets.UTF_8));
    return 1;
  }
}
