package leafturn.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class DataTableTest {
  private static final String TEXT =
      """
      # parameters of a made-up grass
      name\tvalue\tlow\thigh\tstatus

      gmax\t19\t12\t2.4e1\tTUNED
      rho\t 0.60 \t.4\t\tour judgement
      shade\t1
      """;

  private static DataTable.Row row(int index) {
    return DataTable.ofText("grass.tsv", TEXT).rows().get(index);
  }

  @Test
  void readsTextAndNumbersUnderTheirHeader() {
    assertThat(DataTable.ofText("grass.tsv", TEXT).columns())
        .containsExactly("name", "value", "low", "high", "status");
    assertThat(row(0).text("name")).isEqualTo("gmax");
    assertThat(row(0).number("high")).isEqualTo(24);
    assertThat(row(0).wholeNumber("value")).isEqualTo(19);
    assertThat(row(1).number("value")).isEqualTo(0.6);
    assertThat(row(1).number("high")).isNaN();
    assertThat(row(2).text("status")).isEmpty();
    assertThat(row(2).line()).isEqualTo(6);
  }

  private enum Status {
    TUNED,
    OUR_JUDGEMENT
  }

  @Test
  void readsAConstantAsItIsSpoken() {
    assertThat(row(0).constant("status", Status.class)).isEqualTo(Status.TUNED);
    assertThat(row(1).constant("status", Status.class)).isEqualTo(Status.OUR_JUDGEMENT);
    assertThatThrownBy(() -> row(0).constant("name", Status.class))
        .hasMessage(
            "grass.tsv line 4, column 'name' holds 'gmax', but must be one of tuned, our judgement");
  }

  @Test
  void namesFileLineAndColumnOfABadCell() {
    assertThatThrownBy(() -> row(0).number("name"))
        .hasMessage(
            "grass.tsv line 4, column 'name' holds 'gmax', but a number such as 0.25 is needed");
    assertThatThrownBy(() -> row(1).requiredNumber("high"))
        .hasMessage("grass.tsv line 5, column 'high' is empty, but a value is needed");
    assertThatThrownBy(() -> row(1).wholeNumber("value"))
        .hasMessage("grass.tsv line 5, column 'value' holds '0.60', but a whole number is needed");
    assertThatThrownBy(() -> row(1).text("unit"))
        .hasMessage(
            "grass.tsv has no column 'unit'; its columns are name, value, low, high, status");
  }

  @Test
  void doesNotTakeJavaSpellingsForNumbers() {
    for (String spelling : new String[] {"1d", "0x1p3", "NaN", "Infinity", "1,5", "."}) {
      DataTable table = DataTable.ofText("t.tsv", "a\n" + spelling);
      assertThatThrownBy(() -> table.rows().get(0).number("a")).hasMessageContaining(spelling);
    }
  }

  @Test
  void reportsAllFaultsOfAFileAtOnce() {
    assertThatThrownBy(() -> DataTable.ofText("t.tsv", "a\ta\t\n1\t2\t3\t4\n1\n1\t2\t3\t4\t5"))
        .hasMessage(
            """
            t.tsv line 1 names column 'a' twice
            t.tsv line 1: column 3 has no name
            t.tsv line 2 has 4 cells, but the header names 3 columns
            t.tsv line 4 has 5 cells, but the header names 3 columns""");
    assertThatThrownBy(() -> DataTable.ofText("t.tsv", "# nothing"))
        .hasMessage("t.tsv has no header line");
  }

  @Test
  void readsFromTheClassPathAndSaysWhenThereIsNothing() {
    assertThat(DataTable.ofResource(DataTableTest.class, "example.tsv").rows()).hasSize(1);
    assertThatThrownBy(() -> DataTable.ofResource(DataTableTest.class, "none.tsv"))
        .hasMessageContaining("there is no table none.tsv");
  }
}
