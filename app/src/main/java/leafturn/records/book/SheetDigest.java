package leafturn.records.book;

import leafturn.records.Sha256;

/** A digest of all that a version of a sheet means, by which damage is told. */
public final class SheetDigest {
  private SheetDigest() {}

  /** SHA-256 in hexadecimal over kind, id, version, standing, time, writer and document. */
  static String of(Sheet<?> sheet, String document) {
    return of(
        new StoredVersion(
            sheet.kind().name(),
            sheet.id(),
            sheet.version(),
            sheet.withdrawn(),
            sheet.writtenAt(),
            sheet.writtenBy(),
            document));
  }

  /** The digest that belongs to a version as it stands in its row. */
  public static String of(StoredVersion version) {
    String all =
        String.join(
            "\n",
            version.kind(),
            version.id(),
            Integer.toString(version.version()),
            version.withdrawn() ? "withdrawn" : "standing",
            version.writtenAt().toString(),
            version.writtenBy(),
            version.document());
    return Sha256.of(all);
  }
}
