package leafturn.records.table;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLStreamException;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.NearestName;
import org.jspecify.annotations.Nullable;

/**
 * An XLSX workbook (ECMA-376): a ZIP archive with a part for the list of sheets, one for texts that
 * cells share, one for formats and one for each sheet. Parts are read as they stream by, within the
 * limits of {@link PartStream}; nothing else in the archive is unpacked.
 */
final class Workbook {
  private static final int MOST_PARTS = 2000;
  private static final int MOST_SHARED_CHARACTERS = 20_000_000;
  private static final String FOLDER = "xl/";
  private static final String SHEETS = "xl/workbook.xml";
  private static final String TARGETS = "xl/_rels/workbook.xml.rels";
  private static final String TEXTS = "xl/sharedstrings.xml";
  private static final String STYLES = "xl/styles.xml";

  private final String name;
  private final ZipFile archive;
  private final Map<String, ZipEntry> parts = new HashMap<>();
  private final List<SheetName> sheets = new ArrayList<>();
  private final Map<String, String> targets = new HashMap<>();
  private final List<String> texts = new ArrayList<>();
  private final CellFormats formats = new CellFormats();
  private long unpackedBytes;

  private record SheetName(String name, String relation, boolean hidden) {}

  /** Takes a part of the archive. */
  private interface PartReader {
    void read(PartXml xml) throws XMLStreamException;
  }

  private Workbook(String name, ZipFile archive) {
    this.name = name;
    this.archive = archive;
  }

  /**
   * The table on a sheet of a workbook.
   *
   * @param name of the file as the user gave it
   * @param sheet its name, or null for the first shown sheet that is not empty
   * @throws InputException when it is no workbook, a damaged or oversized one, or has no such sheet
   */
  static Table read(String name, byte[] bytes, @Nullable String sheet) {
    // The JDK reads an archive by its list of parts only from a file.
    Path file = null;
    try {
      file = Files.createTempFile("leafturn", ".xlsx");
      Files.write(file, bytes);
      try (ZipFile archive = new ZipFile(file.toFile())) {
        return new Workbook(name, archive).table(sheet);
      }
    } catch (IOException | IllegalArgumentException e) {
      // IllegalArgumentException: names in the archive that are no text
      throw damaged(name, "the archive breaks off or is not in order");
    } finally {
      delete(file);
    }
  }

  private static void delete(@Nullable Path file) {
    try {
      if (file != null) {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      file.toFile().deleteOnExit();
    }
  }

  private Table table(@Nullable String sheet) {
    listParts();
    forPart(SHEETS, this::readSheetNames);
    forPart(TARGETS, this::readTargets);
    forPart(TEXTS, this::readTexts);
    forPart(STYLES, formats::read);
    List<SheetName> shown = sheets.stream().filter(each -> !each.hidden()).toList();
    List<String> names = shown.stream().map(SheetName::name).toList();
    if (sheet != null && !names.contains(sheet)) {
      throw new InputException(
          "%s: it has no sheet %s; %s"
              .formatted(name, Faults.quoted(sheet), NearestName.advice(sheet, names)));
    }
    for (SheetName each : shown) {
      if (sheet == null || each.name().equals(sheet)) {
        SheetCells cells = new SheetCells(name, texts, formats);
        forPart(part(each), cells::read);
        if (!cells.isEmpty()) {
          return cells.table(each.name(), names);
        }
      }
    }
    throw new InputException(
        sheet == null
            ? name + ": its sheets are empty; a row with the names of the columns is expected."
            : "%s: the sheet %s is empty; a row with the names of the columns is expected."
                .formatted(name, Faults.quoted(sheet)));
  }

  private void listParts() {
    for (ZipEntry entry : Collections.list(archive.entries())) {
      if (parts.put(entry.getName().toLowerCase(Locale.ROOT), entry) != null
          || parts.size() > MOST_PARTS) {
        throw damaged(name, "it has parts of one name, or too many");
      }
    }
    if (!parts.containsKey(SHEETS)) {
      throw new InputException(
          name + ": it is an archive but no XLSX workbook; give a workbook or a CSV file.");
    }
  }

  private String part(SheetName sheet) {
    String target = targets.getOrDefault(sheet.relation(), "");
    String path = target.startsWith("/") ? target.substring(1) : FOLDER + target;
    return path.toLowerCase(Locale.ROOT);
  }

  private void readSheetNames(PartXml xml) throws XMLStreamException {
    while (xml.nextElement()) {
      if (xml.is("sheet")) {
        String state = xml.attribute("state");
        sheets.add(
            new SheetName(
                orEmpty(xml.attribute("name")),
                orEmpty(xml.attribute("id")),
                state != null && !state.equals("visible")));
      } else if (xml.is("workbookPr")
          && Set.of("1", "true").contains(orEmpty(xml.attribute("date1904")))) {
        formats.countFrom1904();
      }
    }
  }

  private void readTargets(PartXml xml) throws XMLStreamException {
    while (xml.nextElement()) {
      if (xml.is("Relationship")) {
        targets.put(orEmpty(xml.attribute("Id")), orEmpty(xml.attribute("Target")));
      }
    }
  }

  private void readTexts(PartXml xml) throws XMLStreamException {
    long characters = 0;
    while (xml.nextElement()) {
      if (xml.is("si")) {
        String text = xml.richText("si");
        characters += text.length();
        texts.add(text);
        if (texts.size() > TableFile.MOST_CELLS || characters > MOST_SHARED_CHARACTERS) {
          throw new XMLStreamException("it holds more text than a table may have");
        }
      }
    }
  }

  private void forPart(String part, PartReader reader) {
    ZipEntry entry = parts.get(part);
    if (entry == null) {
      return;
    }
    try (InputStream unpacked = archive.getInputStream(entry);
        PartStream stream = new PartStream(unpacked, unpackedBytes)) {
      reader.read(new PartXml(stream));
      unpackedBytes = stream.total();
    } catch (XMLStreamException e) {
      throw e.getNestedException() instanceof PartStream.TooMuchException tooMuch
          ? new InputException(name + ": " + tooMuch.getMessage() + "; save only the table.")
          : damaged(name, "a part of it cannot be read");
    } catch (IOException e) {
      throw damaged(name, "a part of it cannot be unpacked");
    }
  }

  private static InputException damaged(String name, String why) {
    return new InputException(
        "%s: the workbook is damaged (%s); save it anew, or as CSV.".formatted(name, why));
  }

  private static String orEmpty(@Nullable String text) {
    return text == null ? "" : text;
  }
}
