package leafturn.records.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import leafturn.records.MeasuredWeather;
import leafturn.records.book.BookReading;
import leafturn.records.book.StationDays;
import leafturn.records.book.StoredSheet;
import leafturn.records.book.StoredSheets;
import leafturn.records.book.StoredVersion;
import leafturn.records.sheet.Kind;

/** Writes what was set aside as it stands in the database, for somebody to make sense of. */
final class DamagedFiles {
  private final BookReading book;
  private final ZipWriting zip;
  private final SetAside aside;

  DamagedFiles(BookReading book, ZipWriting zip, SetAside aside) {
    this.book = book;
    this.zip = zip;
    this.aside = aside;
  }

  void write() throws IOException {
    Map<String, String> texts = new TreeMap<>();
    aside.sheets().values().stream()
        .map(sheet -> sheet.kind().name())
        .distinct()
        .forEach(kind -> StoredSheets.forEach(book, kind, sheet -> note(sheet, texts)));
    for (Map.Entry<String, String> text : texts.entrySet()) {
      put(text.getKey(), text.getValue().getBytes(StandardCharsets.UTF_8));
    }
    for (Map.Entry<String, SetAside.Sheet> sheet : aside.sheets().entrySet()) {
      if (sheet.getValue().kind().equals(Kind.STATION)) {
        put(Members.damagedWeather(sheet.getKey()), weather(sheet.getKey()));
      }
    }
  }

  private void note(StoredSheet stored, Map<String, String> texts) {
    SetAside.Sheet sheet = aside.sheets().get(stored.id());
    if (sheet == null) {
      return;
    }
    StringBuilder text = new StringBuilder();
    text.append("%s %s: %s.\n".formatted(sheet.kind(), stored.id(), sheet.why()));
    for (StoredVersion version : stored.versions()) {
      text.append(
          "\nversion %d, written %s by %s%s\n%s\n"
              .formatted(
                  version.version(),
                  version.writtenAt(),
                  version.writtenBy(),
                  version.withdrawn() ? ", withdrawn" : "",
                  version.document()));
    }
    texts.put(Members.damaged(sheet.kind(), stored.id()), text.toString());
  }

  private byte[] weather(String station) {
    String lines =
        StationDays.of(book, station).stream()
            .map(day -> MeasuredWeather.line(day.day(), day.values()) + "\n")
            .collect(Collectors.joining());
    return (MeasuredWeather.header() + "\n" + lines).getBytes(StandardCharsets.UTF_8);
  }

  private void put(String name, byte[] bytes) throws IOException {
    zip.derived(
        name,
        out -> {
          out.write(bytes);
          return 1;
        });
  }
}
