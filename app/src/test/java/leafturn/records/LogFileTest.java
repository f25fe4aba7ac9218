package leafturn.records;

import static leafturn.records.Examples.faultsOf;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import leafturn.model.lawn.LogEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LogFileTest {
  private static final String HEADER =
      "date,what,height_before_mm,height_after_mm,clippings,fast_n_g_m2,slow_n_g_m2,p_g_m2,"
          + "k_g_m2,water_mm,note\n";
  private static final LocalDate DAY = LocalDate.of(2015, 5, 1);

  private static LogReading read(String csv) {
    return LogFile.read(new SourceText("LOG.csv", csv));
  }

  private static List<String> faults(String csv) {
    return faultsOf(() -> read(csv));
  }

  @Test
  void readsEachKindOfEntry() {
    LogReading reading =
        read(
            HEADER
                + """
                2015-05-01,mown,100,76,returned,,,,,,
                2015-05-01,Mown,,60,0.25,,,,,,cut twice
                2015-05-02,mown,80,,collected,,,,,,
                2015-05-03,fed,,,,3.7,1,0.5,2,,
                2015-05-04,watered,,,,,,,,12,
                """);
    assertThat(reading.notes()).isEmpty();
    assertThat(reading.entries())
        .containsExactly(
            new LogEntry.Mown(DAY, 100, 76, 1),
            new LogEntry.Mown(DAY, Double.NaN, 60, 0.25),
            new LogEntry.Mown(DAY.plusDays(1), 80, Double.NaN, 0),
            new LogEntry.Fed(DAY.plusDays(2), 3.7, 1, 0.5, 2),
            new LogEntry.Watered(DAY.plusDays(3), 12));
  }

  @Test
  void aHeaderAloneIsALogInWhichNothingWasDone() {
    assertThat(read("date,what\n").entries()).isEmpty();
  }

  @Test
  void readsSemicolonsAndWindowsLineEnds() {
    LogReading reading =
        read("date;what;clippings;height_before_mm\r\n2015-05-01;mown;0,5;80,5\r\n");
    assertThat(reading.entries()).containsExactly(new LogEntry.Mown(DAY, 80.5, Double.NaN, 0.5));
  }

  @Test
  void sortsEntriesAndSaysSo() {
    LogReading reading =
        read("date,what,clippings\n2015-05-02,mown,returned\n2015-05-01,mown,returned\n");
    assertThat(reading.entries().get(0).day()).isEqualTo(DAY);
    assertThat(reading.notes()).singleElement().asString().contains("line 3", "sorted");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          2015-05-32,mown,100,76,returned,,,,,,     | date        | a day that exists
          0000-05-01,mown,100,76,returned,,,,,,     | date        | years 1700 to 2200
          ,mown,100,76,returned,,,,,,               | date        | missing
          2015-05-01,mowed,100,76,returned,,,,,,    | what        | mown, fed, watered
          2015-05-01,,100,76,returned,,,,,,         | what        | mown, fed, watered
          2015-05-01,mown,tall,76,returned,,,,,,    | before      | not a number
          2015-05-01,mown,NaN,76,returned,,,,,,     | before      | not a number
          2015-05-01,mown,2,,returned,,,,,,         | before      | from 3 to 1000
          2015-05-01,mown,100,1001,returned,,,,,,   | after       | from 3 to 1000
          2015-05-01,mown,76,100,returned,,,,,,     | after       | above the height before
          2015-05-01,mown,100,76,,,,,,,             | clippings   | missing
          2015-05-01,mown,100,76,kept,,,,,,         | clippings   | collected
          2015-05-01,mown,100,76,1.5,,,,,,          | clippings   | from 0 to 1
          2015-05-01,mown,100,76,"0,5",,,,,,        | clippings   | decimal comma
          2015-05-01,mown,100,76,returned,3,,,,,    | fast_n      | belongs to fed
          2015-05-01,fed,,,,,,,,,                   | fed         | no amount
          2015-05-01,fed,,,,-1,,,,,                 | fast_n      | from 0 to 100
          2015-05-01,fed,,,,101,,,,,                | fast_n      | from 0 to 100
          2015-05-01,fed,,,,lots,,,,,               | fast_n      | not a number
          2015-05-01,watered,,,,,,,,,               | water_mm    | missing
          2015-05-01,watered,,,,,,,,201,            | water_mm    | from 0 to 200
          2015-05-01,mown                           | 2 cells     | 11 columns
          """)
  void refusesABadLine(String line, String where, String words) {
    assertThat(faults(HEADER + line + "\n"))
        .first()
        .asString()
        .contains("LOG.csv, line 2", where, words);
  }

  @Test
  void refusesTheSameEntryTwice() {
    String line = "2015-05-01,mown,100,76,returned,,,,,,\n";
    assertThat(faults(HEADER + line + line))
        .singleElement()
        .asString()
        .contains("line 3", "line 2");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          ''                          | empty
          what,clippings              | no column date
          date,clippings              | no column what
          date,what,hight_before_mm   | did you mean height_before_mm?
          date,date,what              | two columns
          """)
  void refusesABadHeader(String header, String words) {
    assertThat(faults(header)).anySatisfy(fault -> assertThat(fault).contains("LOG.csv", words));
  }

  @Test
  void reportsAllBadLinesAtOnce() {
    assertThat(faults(HEADER + "x,mown,,,,,,,,,\n2015-05-01,cut,,,,,,,,,\n")).hasSize(3);
  }
}
