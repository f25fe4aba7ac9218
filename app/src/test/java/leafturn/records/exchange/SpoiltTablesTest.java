package leafturn.records.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.SplittableRandom;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import leafturn.records.Examples;
import leafturn.records.InputException;
import leafturn.records.Mutations;
import leafturn.records.book.BookReading;
import leafturn.records.table.SampleWorkbook;
import leafturn.records.table.Table;
import leafturn.records.table.TableFile;
import org.junit.jupiter.api.Test;

/** Five thousand spoilt tables: each is looked at, or refused with sentences. */
class SpoiltTablesTest extends ImportingTest {
  private static final long SEED = 20_261_126;
  private static final int FILES_OF_A_KIND = 1_000;

  private int refused;
  private int faulty;

  @Test
  void spoiltCsvFilesAreLookedAtOrRefusedWithSentences() {
    List<String> files =
        List.of(
            lines("linden-house-front.log.csv", 12),
            lines("properties.csv", 8),
            lines("new-york-2012-2015.csv", 12));
    for (int kind = 0; kind < files.size(); kind++) {
      for (int file = 0; file < FILES_OF_A_KIND; file++) {
        String spoilt = new Mutations(SEED + file).spoil(files.get(kind));
        look(kind, spoilt.getBytes(StandardCharsets.UTF_8), file);
      }
    }
    assertThat(refused).isBetween(10, 2900);
    assertThat(faulty).isBetween(1000, 2900);
  }

  @Test
  void spoiltWorkbooksAreLookedAtOrRefusedWithSentences() throws IOException {
    byte[] original = workbook();
    for (int file = 0; file < FILES_OF_A_KIND; file++) {
      look(0, spoiltBytes(original, new SplittableRandom(SEED + file)), file);
      look(0, spoiltPart(original, SEED + file), file);
    }
    assertThat(refused).isBetween(100, 1900);
    assertThat(faulty).isBetween(20, 1900);
  }

  private static byte[] workbook() {
    Table log = ImportBook.csv(lines("linden-house-front.log.csv", 12));
    StringBuilder rows = new StringBuilder("<row r=\"1\">");
    log.headings()
        .forEach(name -> rows.append("<c t=\"s\"><v>" + log.headings().indexOf(name) + "</v></c>"));
    rows.append("</row>");
    for (Table.Row row : log.rows()) {
      rows.append("<row r=\"" + row.number() + "\">");
      for (int column = 0; column < row.cells().size(); column++) {
        String cell = row.cells().get(column);
        String place = Table.letters(column) + row.number();
        boolean number = cell.matches("[0-9.]+");
        rows.append(
            "<c r=\"" + place + (number ? "\"><v>" : "\" t=\"str\"><v>") + cell + "</v></c>");
      }
      rows.append("</row>");
    }
    StringBuilder texts = new StringBuilder("<sst>");
    log.headings().forEach(name -> texts.append("<si><t>" + name + "</t></si>"));
    return new SampleWorkbook()
        .part("xl/sharedStrings.xml", texts + "</sst>")
        .part("xl/styles.xml", "<styleSheet><cellXfs><xf numFmtId=\"0\"/></cellXfs></styleSheet>")
        .rows(rows.toString())
        .bytes();
  }

  private static byte[] spoiltBytes(byte[] original, SplittableRandom random) {
    byte[] bytes = original.clone();
    int times = 1 + random.nextInt(6);
    for (int time = 0; time < times; time++) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return random.nextInt(10) == 0
        ? java.util.Arrays.copyOf(bytes, 4 + random.nextInt(bytes.length))
        : bytes;
  }

  /** The archive in order, and the text of one of its parts not. */
  private static byte[] spoiltPart(byte[] original, long seed) throws IOException {
    int wanted = new SplittableRandom(seed).nextInt(5);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(original));
        ZipOutputStream to = new ZipOutputStream(bytes)) {
      int part = 0;
      for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
        String text = new String(from.readAllBytes(), StandardCharsets.UTF_8);
        to.putNextEntry(new ZipEntry(entry.getName()));
        String written = part == wanted ? new Mutations(seed).spoil(text) : text;
        to.write(written.getBytes(StandardCharsets.UTF_8));
        part++;
      }
    }
    return bytes.toByteArray();
  }

  private static String lines(String example, int count) {
    return String.join("\n", Examples.text(example).text().lines().limit(count).toList()) + "\n";
  }

  private void look(int kind, byte[] bytes, int file) {
    try {
      Preview preview = book.book().read(reader -> look(reader, kind, bytes));
      faulty += preview.faults().count() > 0 ? 1 : 0;
      assertThat(preview.faults().kept())
          .as("kind %d, seed %d + %d", kind, SEED, file)
          .allSatisfy(fault -> assertSentence(fault.sentence()));
    } catch (InputException e) {
      refused++;
      assertThat(e.faults())
          .as("kind %d, seed %d + %d", kind, SEED, file)
          .isNotEmpty()
          .allSatisfy(SpoiltTablesTest::assertSentence);
    } catch (RuntimeException e) {
      throw new AssertionError(
          "kind %d with seed %d + %d was neither looked at nor refused:%n%s"
              .formatted(kind, SEED, file, new String(bytes, StandardCharsets.UTF_8)),
          e);
    }
  }

  private static void assertSentence(String fault) {
    assertThat(fault).matches("(?s).*[.?]").hasSizeLessThan(1500);
    assertThat(fault.lines()).hasSize(1);
  }

  private static Preview look(BookReading reader, int kind, byte[] bytes) {
    Table table = TableFile.read("spoilt", bytes, null);
    return switch (kind) {
      case 0 ->
          LogImport.look(
              reader,
              table,
              Reading.byHeadings(table, LogColumns.ALL),
              ImportBook.ask(ImportBook.FRONT, ImportBook.TODAY));
      case 1 ->
          PropertyImport.look(
              reader,
              table,
              Reading.byHeadings(table, PropertyColumns.ALL),
              LocalDate.of(2015, 1, 1));
      default ->
          WeatherImport.look(
              reader,
              table,
              Reading.byHeadings(table, WeatherColumns.ALL),
              ImportBook.weatherAsk(bytes.length % 2 == 0));
    };
  }
}
