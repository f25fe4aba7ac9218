package leafturn.records.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import leafturn.records.InputException;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TableFileTest {
  @Test
  void csvIsReadWithCommasSemicolonsAndTabs() {
    for (String separator : List.of(",", ";", "\t")) {
      String text = String.join(separator, "\uFEFFDate", "What\n2015-05-28", "\"mown, twice\"\n\n");
      Table table = csv(text);
      assertThat(table.headings()).containsExactly("Date", "What");
      assertThat(table.rows())
          .containsExactly(new Table.Row(2, List.of("2015-05-28", "mown, twice"), Map.of()));
      assertThat(table.decimalCommas()).isEqualTo(!separator.equals(","));
      assertThat(table.place(table.rows().get(0), 1)).isEqualTo("line 2, column B / What");
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''                 | it is empty; a header line",
        "'a,a\n1,2\n'       | two columns have this name; keep one.",
        "'a,\"b\"c\n1,2\n'  | cannot be read as CSV; check its quotation marks"
      })
  void aCsvFileThatCannotBeReadSaysWhy(String text, String fault) {
    assertThatThrownBy(() -> csv(text))
        .isInstanceOf(InputException.class)
        .hasMessageContaining(fault);
  }

  @Test
  void rowsThatCannotBeToldApartAreFaultsBesideTheOthers() {
    Table table = csv("a,b\n1,2,3\n4,5\n\n\"6\"7,8\n9\n10,\"11\n12,13\n");
    assertThat(table.rows())
        .extracting(Table.Row::number, Table.Row::cells)
        .containsExactly(tuple(3, List.of("4", "5")), tuple(8, List.of("12", "13")));
    assertThat(table.rowFaults()).extracting(Table.RowFault::number).containsExactly(2, 5, 6, 7);
    assertThat(table.rowFaults())
        .extracting(Table.RowFault::sentence)
        .satisfiesExactly(
            each -> assertThat(each).isEqualTo("it has 3 cells, but the header names 2 columns."),
            each -> assertThat(each).contains("its quotation marks are not in order"),
            each -> assertThat(each).isEqualTo("it has 1 cell, but the header names 2 columns."),
            each -> assertThat(each).contains("its quotation marks are not in order"));
  }

  @Test
  void linesAreCountedAcrossCellsOfSeveralLinesAndBrokenRows() {
    Table table = csv("a,b\r\n\"1\r\n1\",2\r\n\r\n\"3\"x,4\r\n5,\"6\n6\"\r7,8\n9,10,11\n");
    assertThat(table.rows()).extracting(Table.Row::number).containsExactly(2, 6, 8);
    assertThat(table.rowFaults()).extracting(Table.RowFault::number).containsExactly(5, 9);
  }

  @Test
  void afterTwentyBrokenRowsTheRestIsNotRead() {
    Table table = csv("a,b\n" + "\"1\"x,2\n".repeat(30));
    assertThat(table.rowFaults()).hasSize(20);
    assertThat(table.rowFaults().get(19).number()).isEqualTo(21);
    assertThat(table.rowFaults().get(19).sentence())
        .endsWith("is doubled. The lines below it were not read.");
  }

  @Test
  void textThatIsNotUtf8IsTold() {
    assertThatThrownBy(() -> TableFile.read("log.csv", new byte[] {'a', (byte) 0xE9}, null))
        .hasMessage("log.csv: it is not UTF-8 text; save it as UTF-8.");
  }

  @Test
  void tooManyRowsAreTold() {
    String text = "a\n" + "1\n".repeat(TableFile.MOST_ROWS + 1);
    assertThatThrownBy(() -> csv(text))
        .hasMessage("log.csv: it has more than 50,000 rows; import it in parts.");
    assertThat(csv("a\n" + "1\n".repeat(TableFile.MOST_ROWS)).rows()).hasSize(TableFile.MOST_ROWS);
  }

  @Test
  void otherFilesAreTold() {
    byte[] old = {
      (byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1, 0x1A, (byte) 0xE1
    };
    assertThatThrownBy(() -> TableFile.read("a.xls", old, null))
        .hasMessageContaining("save it without one as XLSX");
    assertThatThrownBy(() -> TableFile.read("a.zip", zipOf("readme.txt"), null))
        .hasMessageContaining("it is an archive but no XLSX workbook");
    assertThatThrownBy(() -> TableFile.read("a.xlsx", sheet(""), null))
        .hasMessageContaining("its sheets are empty");
    assertThatThrownBy(() -> TableFile.read("a.csv", new byte[TableFile.LIMIT_BYTES + 1], null))
        .hasMessage("a.csv: it is too large; a table may have up to 10 MB.");
  }

  private static byte[] zipOf(String name) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (var zip = new java.util.zip.ZipOutputStream(bytes)) {
      zip.putNextEntry(new java.util.zip.ZipEntry(name));
      zip.closeEntry();
    }
    return bytes.toByteArray();
  }

  private static Table csv(@Nullable String text) {
    String content = text == null ? "" : text;
    return TableFile.read("log.csv", content.getBytes(StandardCharsets.UTF_8), null);
  }

  private static byte[] sheet(String rows) {
    return new SampleWorkbook().rows(rows).bytes();
  }
}
