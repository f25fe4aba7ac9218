package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.quantity.Units;
import leafturn.records.Examples;
import leafturn.records.exchange.LogTable;
import leafturn.records.sheet.Kind;
import leafturn.records.table.TableFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ImportRoomTest extends DemoSite {
  private static final Pattern SEEN = Pattern.compile("name=\"seen\" value=\"([^\"]+)\"");
  private static final String WATERED = "date,what,water_mm\n2015-05-20,watered,";

  private String lawn;
  private String station;

  @BeforeEach
  void find() {
    lawn = book.read(reading -> reading.at(Kind.LAWN, "linden-house-back").orElseThrow().id());
    station = book.read(reading -> reading.all(Kind.STATION).get(0).id());
  }

  private HttpResponse<String> sendLog(String csv) throws Exception {
    return asking.upload(
        "/import",
        Map.of("kind", "log", "lawn", lawn),
        "log.csv",
        csv.getBytes(StandardCharsets.UTF_8));
  }

  private static String seen(String page) {
    Matcher seen = SEEN.matcher(page);
    assertThat(seen.find()).isTrue();
    return seen.group(1);
  }

  private int entries() {
    return book.<Integer>read(reading -> reading.ofLawn(Kind.LOG, lawn).size());
  }

  @Test
  void aLogIsLookedAtAndThenImportedOnce() throws Exception {
    int before = entries();
    HttpResponse<String> sent = sendLog(WATERED + "12\n");
    assertThat(sent.statusCode()).isEqualTo(303);
    String address = Asking.location(sent).getPath();
    String page = asking.get(address).body();
    assertThat(page)
        .contains(
            "1 entry can be imported.", "20 May 2015 watered, 12\u00a0mm", "Import this entry");
    assertThat(entries()).isEqualTo(before);
    Map<String, String> fields = Map.of("seen", seen(page));
    assertThat(asking.postForm(address + "/add", fields).statusCode()).isEqualTo(303);
    assertThat(entries()).isEqualTo(before + 1);
    assertThat(asking.get(address).body())
        .contains("1 entry imported.", "/lawns/linden-house-back");
    assertThat(asking.postForm(address + "/add", fields).statusCode()).isEqualTo(303);
    assertThat(entries()).isEqualTo(before + 1);
    String again = Asking.location(sendLog(WATERED + "12\n")).getPath();
    assertThat(asking.get(again).body()).contains("There is nothing new in this file.");
  }

  @Test
  void faultsAreToldWithTheirCellsAndColumnsCanBeChosen() throws Exception {
    String csv = "Tag,what,Zoll\n2015-05-20,watered,0.5\n2015-15-20,watered,x\n";
    String address = Asking.location(sendLog(csv)).getPath();
    assertThat(asking.get(address).body())
        .contains("One thing is to be put right first.", "No column is taken for date")
        .doesNotContain("Import th");
    Map<String, String> columns =
        Map.of("column-0", "date", "column-1", "what", "column-2", "water_mm", "units-2", "us");
    assertThat(asking.postForm(address + "/columns", columns).statusCode()).isEqualTo(303);
    assertThat(asking.get(address).body())
        .contains("2 things are to be put right first.")
        .contains("line 3, column A / Tag", "is not a date")
        .contains("line 3, column C / Zoll", "is not a number")
        .contains("20 May 2015 watered, 12.7\u00a0mm", "<option value=\"us\" selected");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          log        | date,what,water_mm         | 2015-05-20,watered,1,2 | soon,watered,1
          properties | property,lawn,grass        | Fern,Front,fescue,200  | ,Front,fine fescue
          weather    | date,rain_mm,tmax_c        | 2015-05-20,1,2,9       | soon,12,9
          """)
  void aStrayCellIsToldBesideEveryOtherFault(String kind, String header, String stray, String wrong)
      throws Exception {
    byte[] csv = "%s\n%s\n%s\n".formatted(header, stray, wrong).getBytes(StandardCharsets.UTF_8);
    Map<String, String> form = Map.of("kind", kind, "lawn", lawn, "station", station);
    HttpResponse<String> sent = asking.upload("/import", form, "f.csv", csv);
    String address = Asking.location(sent).getPath();
    assertThat(asking.get(address).body())
        .contains("2 things are to be put right first.")
        .contains("line 2", "It has 4 cells, but the header names 3 columns.")
        .contains("line 3, column A")
        .doesNotContain("name=\"seen\"");
    assertThat(asking.postForm(address + "/add", Map.of("seen", "")).statusCode()).isEqualTo(409);
  }

  @Test
  void whatChangedSinceItWasSeenIsNotImported() throws Exception {
    String address = Asking.location(sendLog(WATERED + "12\n")).getPath();
    String seen = seen(asking.get(address).body());
    String other = Asking.location(sendLog(WATERED + "12\n")).getPath();
    asking.postForm(other + "/add", Map.of("seen", seen(asking.get(other).body())));
    int entries = entries();
    HttpResponse<String> late = asking.postForm(address + "/add", Map.of("seen", seen));
    assertThat(late.statusCode()).isEqualTo(409);
    assertThat(late.body()).contains("The book has changed since you looked.");
    assertThat(entries()).isEqualTo(entries);
    assertThat(asking.postForm(address + "/add", Map.of()).statusCode()).isEqualTo(409);
  }

  @Test
  void aFileBelongsToTheBrowserItCameFrom() throws Exception {
    String address = Asking.location(sendLog(WATERED + "12\n")).getPath();
    Asking another = new Asking(server);
    another.get("/");
    assertThat(another.get(address).statusCode()).isEqualTo(404);
    assertThat(another.postForm(address + "/add").statusCode()).isEqualTo(404);
    assertThat(asking.get(address).statusCode()).isEqualTo(200);
  }

  @Test
  void whatCannotBeReadIsToldAtOnce() throws Exception {
    byte[] junk = "PK\3\4junk".getBytes(StandardCharsets.UTF_8);
    HttpResponse<String> refused =
        asking.upload("/import", Map.of("kind", "properties"), "a.xlsx", junk);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("a.xlsx: the workbook is damaged");
    assertThat(asking.upload("/import", Map.of("kind", "log"), "a.csv", new byte[0]).body())
        .contains("Choose a file that is not empty.");
    assertThat(asking.upload("/import", Map.of("kind", "x"), "a.csv", junk).body())
        .contains("Choose what the file holds.");
    assertThat(
            asking
                .upload("/import", Map.of("kind", "weather", "station", lawn), "a.csv", junk)
                .body())
        .contains("Choose the station");
    byte[] large = new byte[TableFile.LIMIT_BYTES + 10];
    assertThat(asking.upload("/import", Map.of("kind", "properties"), "a.csv", large).body())
        .contains("it is too large; a table may have up to 10 MB.");
  }

  @Test
  void propertiesComeInWithTheirLawns() throws Exception {
    byte[] csv = Examples.text("properties.csv").text().getBytes(StandardCharsets.UTF_8);
    HttpResponse<String> sent =
        asking.upload("/import", Map.of("kind", "properties"), "../p<b>.csv", csv);
    String address = Asking.location(sent).getPath();
    String page = asking.get(address).body();
    assertThat(page)
        .contains("Import these 2 properties and 4 lawns", "p&lt;b&gt;.csv")
        .doesNotContain("../p");
    asking.postForm(address + "/add", Map.of("seen", seen(page)));
    assertThat(asking.get(address).body()).contains("2 properties and 4 lawns imported.");
    assertThat(book.<Boolean>read(r -> r.at(Kind.LAWN, "fern-row-12-back").isPresent())).isTrue();
  }

  @Test
  void weatherReplacesTheBooksOnlyWhereThatIsAsked() throws Exception {
    byte[] csv = "date,rain_mm\n2015-05-20,77\n".getBytes(StandardCharsets.UTF_8);
    HttpResponse<String> sent =
        asking.upload("/import", Map.of("kind", "weather", "station", station), "w.csv", csv);
    String address = Asking.location(sent).getPath();
    assertThat(asking.get(address).body())
        .contains("There is nothing new in this file.", "The book says otherwise");
    asking.postForm(
        address + "/columns", Map.of("column-0", "date", "column-1", "rain_mm", "replace", "yes"));
    String page = asking.get(address).body();
    assertThat(page).contains("1 day can be imported.", "it is replaced");
    asking.postForm(address + "/add", Map.of("seen", seen(page)));
    assertThat(asking.get("/weather/" + station + "/days/2015-05-20").body())
        .contains("value=\"77\"");
  }

  @Test
  void aLogIsGivenOutAsCsvAndXlsx() throws Exception {
    String csv = asking.get("/lawns/linden-house-back/log.csv").body();
    assertThat(csv)
        .isEqualTo(
            LogTable.of(book.read(reading -> reading.ofLawn(Kind.LOG, lawn)), Units.METRIC).csv());
    HttpResponse<byte[]> xlsx = asking.bytes("/lawns/linden-house-back/log.xlsx");
    assertThat(xlsx.headers().firstValue("Content-Disposition"))
        .contains("attachment; filename=\"linden-house-back-log.xlsx\"");
    assertThat(TableFile.read("log.xlsx", xlsx.body(), null).rows())
        .hasSize((int) csv.lines().count() - 1);
    assertThat(asking.get("/lawns/nowhere/log.csv").statusCode()).isEqualTo(404);
    String address = Asking.location(sendLog(csv)).getPath();
    assertThat(asking.get(address).body()).contains("There is nothing new in this file.");
  }

  @Test
  void aTrialThatHasEndedTakesNoReadings() throws Exception {
    String trial = book.read(reading -> reading.all(Kind.TRIAL).get(0).id());
    byte[] csv =
        "plot,date,outcome,value\nB1-1,2014-06-02,quality,6\n".getBytes(StandardCharsets.UTF_8);
    HttpResponse<String> refused =
        asking.upload("/import", Map.of("kind", "readings", "trial", trial), "r.csv", csv);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("This trial has ended");
    HttpResponse<String> unknown =
        asking.upload("/import", Map.of("kind", "readings", "trial", lawn), "r.csv", csv);
    assertThat(unknown.statusCode()).isEqualTo(422);
    assertThat(unknown.body()).contains("Choose the trial");
  }
}
