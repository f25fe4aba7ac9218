package leafturn.records.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import leafturn.quantity.Units;
import leafturn.records.Choice;
import leafturn.records.LogFile;
import leafturn.records.SourceText;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.AnySheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.What;
import leafturn.records.table.Table;
import leafturn.records.table.TableFile;
import org.junit.jupiter.api.Test;

/** What goes out as a table comes in again as it was. */
class LogTableTest extends ImportingTest {
  private static final long SEED = 20_261_125;

  /** No random entry is of a later day. */
  private static final LocalDate AFTERWARDS = LocalDate.of(2100, 1, 1);

  @Test
  void anExportReadsBackAsItWasWritten() {
    List<Sheet<LogSheet>> written = randomLog(300);
    for (Table table : tablesOf(written)) {
      Preview same = book.log(table, ImportBook.FRONT, AFTERWARDS);
      assertThat(same.faults().kept()).isEmpty();
      assertThat(same.conflicts().kept()).isEmpty();
      assertThat(same.arrivals().count()).isZero();
      assertThat(same.alreadyThere()).isEqualTo(written.size());
    }
  }

  @Test
  void anExportComesIntoAnotherBookEntryByEntry() {
    List<Sheet<LogSheet>> written = randomLog(300);
    Path other = folder.resolve("other");
    try (ImportBook second = new ImportBook(other)) {
      second.write(second.log(csvOf(written, Units.METRIC), ImportBook.FRONT, AFTERWARDS));
      assertThat(second.entries(ImportBook.FRONT))
          .extracting(sheet -> sheet.id() + withoutPhotographs(sheet.content()))
          .containsExactlyInAnyOrderElementsOf(
              written.stream()
                  .map(sheet -> sheet.id() + withoutPhotographs(sheet.content()))
                  .toList());
    }
  }

  private List<Sheet<LogSheet>> randomLog(int entries) {
    AnySheet any = new AnySheet(SEED);
    book.book()
        .write(
            "Ada",
            writing -> {
              List<Sheet<LogSheet>> added = new ArrayList<>();
              while (added.size() < entries) {
                LogSheet entry = any.log(ImportBook.FRONT);
                added.add(writing.add(Kind.LOG, any.id(), entry));
              }
              return added;
            });
    return book.entries(ImportBook.FRONT);
  }

  private static LogSheet withoutPhotographs(LogSheet entry) {
    return new LogSheet(
        entry.lawn(), entry.day(), entry.time(), entry.done(), entry.note(), List.of());
  }

  @Test
  void anExportedLogIsOneForTheCommandLine() {
    book.write(
        book.log(
            """
            date,what,clippings,product,product_kind,label_says_none,note
            2015-05-28,mown,returned,,,,=1+1
            2015-05-29,treated,,Clear,herbicide,yes,
            """,
            ImportBook.FRONT));
    String csv = LogTable.of(book.entries(ImportBook.FRONT), Units.METRIC).csv();
    assertThat(csv).contains(",'=1+1,");
    var reading = LogFile.read(new SourceText("log.csv", csv));
    assertThat(reading.lines()).hasSize(1);
    assertThat(reading.unused())
        .containsExactly(
            "1 line tells of what the model does not use (treated), passed over.",
            "Columns not used: product, product_kind, label_says_none, id.");
  }

  @Test
  void theCommandLineKnowsEveryColumnAndKindOfTheBook() {
    String header =
        String.join(
            ",",
            LogColumns.ALL.stream()
                .map(Column::name)
                .filter(name -> !name.equals("lawn") && !name.equals("property"))
                .toList());
    for (String what : Choice.words(What.class)) {
      boolean modelled = List.of("mown", "fed", "watered").contains(what);
      if (!modelled) {
        assertThat(LogFile.read(new SourceText("a", "date,what\n2015-05-28," + what)).lines())
            .isEmpty();
      }
    }
    assertThat(LogFile.read(new SourceText("a", header + "\n")).lines()).isEmpty();
  }

  private static List<Table> tablesOf(List<Sheet<LogSheet>> entries) {
    return Arrays.stream(Units.values())
        .flatMap(units -> Stream.of(csvOf(entries, units), xlsxOf(entries, units)))
        .toList();
  }

  @Test
  void aWorkbookForAReaderOfUsUnitsIsInTheirs() {
    book.write(
        book.log(
            """
            date,what,clippings,height_before_in,height_after_mm,fast_n_g_m2,water_in
            2015-05-28,mown,returned,4,76,,
            2015-05-29,watered,,,,,0.5
            2015-05-30,fed,,,,4.88,
            """,
            ImportBook.FRONT));
    Table table = xlsxOf(book.entries(ImportBook.FRONT), Units.US);
    assertThat(table.headings())
        .contains("height_before_in", "height_after_in", "fast_n_lb_1000_ft2", "water_in")
        .doesNotContain("height_before_mm", "water_mm");
    assertThat(table.rows().get(0).cells()).contains("4");
    assertThat(table.rows().get(1).cells()).contains("0.5");
  }

  private static Table csvOf(List<Sheet<LogSheet>> entries, Units units) {
    byte[] bytes = LogTable.of(entries, units).csv().getBytes(StandardCharsets.UTF_8);
    return TableFile.read("log.csv", bytes, null);
  }

  private static Table xlsxOf(List<Sheet<LogSheet>> entries, Units units) {
    return TableFile.read("log.xlsx", LogTable.of(entries, units).xlsx(), null);
  }
}
