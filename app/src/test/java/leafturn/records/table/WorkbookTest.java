package leafturn.records.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import leafturn.records.InputException;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Workbooks as programs save them, and such as nobody should. */
class WorkbookTest {
  @Test
  void aWorkbookIsReadAsItIsShown() throws IOException {
    Table table = TableFile.read("log.xlsx", saved(WorkbookTest::fill), null);
    assertThat(table.sheet()).isEqualTo("Log");
    assertThat(table.sheets()).containsExactly("Empty", "Log");
    assertThat(table.headings()).containsExactly("date", "what", "height", "share", "done");
    assertThat(table.rows())
        .containsExactly(
            new Table.Row(
                3, List.of("2015-05-28", "mown <all> & \"twice\"", "95.5", "30%", "yes"), Map.of()),
            new Table.Row(5, List.of("2015-05-29 07:30", "", "0.3", "", "no"), Map.of()));
    assertThat(table.place(table.rows().get(0), 2)).isEqualTo("row 3, column C / height");
  }

  private static void fill(Workbook workbook) {
    workbook.newWorksheet("Empty");
    Worksheet sheet = workbook.newWorksheet("Log");
    List<String> headings = List.of("date", " what ", "height", "share", "done");
    for (int column = 0; column < headings.size(); column++) {
      sheet.value(0, column, headings.get(column));
    }
    sheet.value(2, 0, LocalDate.of(2015, 5, 28));
    sheet.style(2, 0).format("d/m/yyyy").set();
    sheet.value(2, 1, "mown <all> & \"twice\"");
    sheet.value(2, 2, 95.5);
    sheet.value(2, 3, 0.3);
    sheet.style(2, 3).format("0%").set();
    sheet.value(2, 4, true);
    sheet.value(4, 0, LocalDateTime.of(2015, 5, 29, 7, 30));
    sheet.style(4, 0).format("yyyy-mm-dd hh:mm").set();
    sheet.value(4, 2, 0.1 + 0.2);
    sheet.value(4, 4, false);
  }

  @Test
  void aSheetIsReadByItsName() throws IOException {
    byte[] bytes =
        saved(
            workbook -> {
              workbook.newWorksheet("May").value(0, 0, "date");
              workbook.newWorksheet("June").value(0, 0, "day");
            });
    assertThat(TableFile.read("log.xlsx", bytes, "June").headings()).containsExactly("day");
    assertThatThrownBy(() -> TableFile.read("log.xlsx", bytes, "Juni"))
        .hasMessage("log.xlsx: it has no sheet \"Juni\"; did you mean June?");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "28    | m/d/yyyy             | 1900-01-28",
        "61    | d-mmm-yy             | 1900-03-01",
        "42152 | mmmm                 | 2015-05-28",
        "42152.5 | yyyy-mm-dd hh:mm   | 2015-05-28 12:00",
        "0.3125 | h:mm:ss             | 07:30",
        "0.05  | 0.0%                 | 5%",
        "1234.5 | #,##0.00 \"days\"   | 1234.5",
        "42152 | [Red]0               | 42152",
        "-3    | yyyy-mm-dd           | -3"
      })
  void numbersMeanWhatTheirFormatSays(String number, String format, String shown) {
    String styles =
        "<styleSheet><numFmts><numFmt numFmtId=\"164\" formatCode=\""
            + format.replace("\"", "&quot;")
            + "\"/></numFmts><cellStyleXfs><xf numFmtId=\"9\"/></cellStyleXfs>"
            + "<cellXfs><xf numFmtId=\"0\"/><xf numFmtId=\"164\"/></cellXfs></styleSheet>";
    byte[] bytes =
        new SampleWorkbook()
            .part("xl/styles.xml", styles)
            .rows(row("<c t=\"str\"><v>x</v></c>") + row("<c s=\"1\"><v>" + number + "</v></c>"))
            .bytes();
    assertThat(TableFile.read("a.xlsx", bytes, null).rows().get(0).cells()).containsExactly(shown);
  }

  @Test
  void daysMayCountFrom1904() {
    byte[] bytes =
        new SampleWorkbook()
            .part(
                "xl/workbook.xml",
                "<workbook><workbookPr date1904=\"1\"/><sheets><sheet name=\"Log\" id=\"r1\"/>"
                    + "</sheets></workbook>")
            .part(
                "xl/styles.xml",
                "<styleSheet><cellXfs><xf numFmtId=\"14\"/></cellXfs></styleSheet>")
            .rows(row("<c t=\"str\"><v>x</v></c>") + row("<c s=\"0\"><v>40690</v></c>"))
            .bytes();
    assertThat(TableFile.read("a.xlsx", bytes, null).rows().get(0).cells())
        .containsExactly("2015-05-28");
  }

  @Test
  void formulasGiveTheirLastValueAndErrorsAreTold() {
    byte[] bytes =
        sheet(
            row(text("A1", "a") + text("B1", "b") + text("C1", "c"))
                + row(
                    "<c r=\"A2\"><f>1+1</f><v>2</v></c>"
                        + "<c r=\"B2\" t=\"e\"><f>1/0</f><v>#DIV/0!</v></c>"
                        + "<c r=\"C2\"><f>A1</f></c>"));
    Table table = TableFile.read("a.xlsx", bytes, null);
    assertThat(table.rows().get(0).cells()).containsExactly("2", "#DIV/0!", "");
    assertThat(table.rows().get(0).faults())
        .containsEntry(1, "its formula gives \"#DIV/0!\"; put in a value, or empty it.")
        .containsEntry(
            2, "its formula has no value yet; open the file, let it calculate, and save it.");
    assertThat(table.notes())
        .containsExactly(
            "2 cells are formulas; the values they had when the file was saved are taken.");
  }

  @Test
  void aFormulaWithAnEmptyValueWasNeverCalculatedUnlessItGivesText() {
    byte[] bytes =
        sheet(
            row(text("A1", "a") + text("B1", "b") + text("C1", "c"))
                + row(
                    text("A2", "x")
                        + "<c r=\"B2\"><f>1000+800</f><v/></c>"
                        + "<c r=\"C2\" t=\"str\"><f>IF(1,\"\",0)</f><v></v></c>"));
    Table table = TableFile.read("a.xlsx", bytes, null);
    assertThat(table.rows().get(0).faults())
        .containsExactly(
            Map.entry(
                1, "its formula has no value yet; open the file, let it calculate, and save it."));
  }

  @Test
  void cellsUnderNoHeadingAreFaultsOfTheirRows() {
    String cells = text("A2", "x") + text("D2", "y") + text("F2", "z");
    byte[] bytes =
        new SampleWorkbook()
            .rows(row(text("A1", "a") + text("B1", "b")) + row(cells) + row(text("A3", "v")))
            .bytes();
    Table table = TableFile.read("a.xlsx", bytes, null);
    assertThat(table.rows()).extracting(Table.Row::number).containsExactly(2, 3);
    assertThat(table.rowFaults())
        .containsExactly(
            new Table.RowFault(
                2,
                "it has a cell under no heading (column D, F); name the column or empty the cell."));
  }

  @Test
  void mergedCellsAreFaultsOfTheirRows() {
    String sentence = "B2:B4 is one merged cell; split it and fill in each of its cells.";
    assertThat(TableFile.read("a.xlsx", merged("B2:B4"), null).rowFaults())
        .containsExactly(new Table.RowFault(2, sentence), new Table.RowFault(3, sentence));
  }

  @Test
  void aMergedHeadingIsAFaultOfTheFile() {
    byte[] bytes = merged("A1:B1");
    assertThatThrownBy(() -> TableFile.read("a.xlsx", bytes, null))
        .hasMessage("a.xlsx: A1:B1 is one merged cell; split it and fill in each of its cells.");
  }

  /** Two columns with a merged range, and one beyond them that does no harm. */
  private static byte[] merged(String range) {
    return new SampleWorkbook()
        .part(
            "xl/worksheets/sheet1.xml",
            "<worksheet><sheetData>"
                + row(text("A1", "a") + text("B1", "b"))
                + row(text("A2", "x"))
                + row(text("A3", "y"))
                + "</sheetData><mergeCells><mergeCell ref=\""
                + range
                + "\"/><mergeCell ref=\"F1:G1\"/></mergeCells></worksheet>")
        .bytes();
  }

  @Test
  void textInRunsIsJoinedWithoutHintsOnItsPronunciation() {
    byte[] bytes =
        new SampleWorkbook()
            .part(
                "xl/sharedStrings.xml",
                "<sst><si><r><t>da</t></r><r><t xml:space=\"preserve\">te</t></r>"
                    + "<rPh sb=\"0\" eb=\"1\"><t>hint</t></rPh></si></sst>")
            .rows(row("<c t=\"s\"><v>0</v></c><c t=\"inlineStr\"><is><t>what</t></is></c>"))
            .bytes();
    assertThat(TableFile.read("a.xlsx", bytes, null).headings()).containsExactly("date", "what");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<c r=\"ZZZZZZ1\"><v>1</v></c>       | the workbook is damaged",
        "<c r=\"XFD1\"><v>1</v></c>          | it has 16384 columns; a table may have up to 200.",
        "<c t=\"s\"><v>7</v></c>             | the workbook is damaged",
        "<c r=\"B1\"/><c r=\"A1\"/>          | the workbook is damaged",
        "<c><v>&unknown;</v></c>             | the workbook is damaged"
      })
  void aHostileSheetIsRefused(String cells, String fault) {
    assertThatThrownBy(() -> TableFile.read("a.xlsx", sheet(row(cells)), null))
        .isInstanceOf(InputException.class)
        .hasMessageContaining(fault);
  }

  @Test
  void declarationsOfEntitiesAreRefused() {
    byte[] bytes =
        new SampleWorkbook()
            .part(
                "xl/worksheets/sheet1.xml",
                "<!DOCTYPE a [<!ENTITY b SYSTEM \"file:///etc/hostname\">]><worksheet><sheetData>"
                    + row("<c t=\"str\"><v>&b;</v></c>")
                    + "</sheetData></worksheet>")
            .bytes();
    assertThatThrownBy(() -> TableFile.read("a.xlsx", bytes, null))
        .hasMessageContaining("the workbook is damaged");
  }

  @Test
  void anArchiveThatUnpacksWithoutEndIsRefused() {
    byte[] bytes =
        new SampleWorkbook()
            .partOf("xl/styles.xml", "<styleSheet>", "<xf></xf>".repeat(100_000), 230)
            .bytes();
    assertThat(bytes).hasSizeLessThan(TableFile.LIMIT_BYTES);
    assertThatThrownBy(() -> TableFile.read("a.xlsx", bytes, null))
        .hasMessage("a.xlsx: it unpacks to more than 200 MB; save only the table.");
  }

  @Test
  void aTextLongerThanACellIsRefusedWhileItIsRead() {
    String cell = text("A1", "a".repeat(3_000_000));
    assertThatThrownBy(() -> TableFile.read("a.xlsx", sheet(row(cell)), null))
        .hasMessageContaining("it holds a text that is longer than a cell may be");
  }

  private interface Filling {
    void fill(Workbook workbook);
  }

  private static byte[] saved(Filling filling) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(bytes, "Test", "1.0")) {
      filling.fill(workbook);
    }
    return bytes.toByteArray();
  }

  private static byte[] sheet(String rows) {
    return new SampleWorkbook().rows(rows).bytes();
  }

  private static String row(String cells) {
    return "<row>" + cells + "</row>";
  }

  private static String text(String place, String words) {
    return "<c r=\"" + place + "\" t=\"str\"><v>" + words + "</v></c>";
  }
}
