package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Analyte;
import leafturn.records.sheet.Determination;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.SoilTestSheet;
import leafturn.records.sheet.SoilUnit;
import org.junit.jupiter.api.Test;

/** Forms with rows of a list: figures of a soil test, feeds of a programme. */
class FormRowsTest extends HeronBankSite {
  @Test
  void aSoilTestKeepsTheRowsWithAFigureAndLeavesOutTheOthers() throws Exception {
    String address =
        added(
            "soil-test",
            "lawn",
            Map.of(
                "day", "2015-04-01",
                "laboratory", "County laboratory",
                "depthCm", "10",
                "determinations[0].analyte", "pH",
                "determinations[1].analyte", "pH",
                "determinations[1].unit", "pH",
                "determinations[1].value", "6.3",
                "determinations[2].analyte", "phosphorus",
                "determinations[2].unit", "mg/kg",
                "determinations[2].value", "<5"));
    assertThat(visitor.read(address))
        .contains("Soil test of Wednesday 1 April 2015, County laboratory")
        .contains("pH 6.3", "Phosphorus &lt;5 mg/kg", "Extractant not told");
    assertThat(visitor.read("/lawns/heron-bank-play"))
        .contains("pH 6.3, phosphorus &lt;5\u202fmg/kg, County laboratory");
    SoilTestSheet test = soilTest();
    assertThat(test.determinations()).hasSize(2);
    assertThat(test.of(Analyte.PHOSPHORUS))
        .hasValue(new Determination(Analyte.PHOSPHORUS, null, 5.0, SoilUnit.MG_PER_KG, false));
    assertThat(visitor.read("/properties/heron-bank")).contains("County laboratory");
  }

  @Test
  void aFeedWithADayAndNoAmountIsRefusedBesideItsRow() throws Exception {
    HttpResponse<String> refused =
        send(
            "programme",
            "lawn",
            Map.of(
                "from", "2015-05-28",
                "feeding[0].on", "04-15",
                "feeding[0].fastNGPerM2", "2",
                "feeding[2].on", "09-15"));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("id=\"f-feeding-1-fastNGPerM2-fault\"", "give at least one amount")
        .doesNotContain("id=\"f-feeding-0-fastNGPerM2-fault\"");
  }

  @Test
  void aFeedWithoutAmountIsToldTogetherWithTheOtherFaults() throws Exception {
    HttpResponse<String> refused =
        send(
            "programme",
            "lawn",
            Map.of(
                "from", "soon",
                "mowing.from", "07-01",
                "mowing.to", "07-01",
                "mowing.trigger.everyDays", "366",
                "feeding[0].on", "04-15"));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("4 things are to be put right", "id=\"f-from-fault\"", "id=\"f-mowing-to-fault\"")
        .contains(
            "id=\"f-mowing-trigger-everyDays-fault\"", "id=\"f-feeding-0-fastNGPerM2-fault\"");
  }

  @Test
  void aFigureThatStandsAsAnOxideIsToldAsOne() throws Exception {
    added(
        "soil-test",
        "lawn",
        Map.of(
            "day", "2015-04-01",
            "laboratory", "County laboratory",
            "depthCm", "10",
            "determinations[0].analyte", "phosphorus",
            "determinations[0].unit", "lb/ac",
            "determinations[0].value", "60",
            "determinations[0].asOxide", "true"));
    assertThat(visitor.read("/lawns/heron-bank-play"))
        .contains("phosphorus 60\u202flb/ac as P2O5, County laboratory");
  }

  @Test
  void aFaultInALaterRowStandsBesideThatRow() throws Exception {
    Map<String, String> fields =
        Map.of(
            "day", "2015-04-01",
            "laboratory", "County laboratory",
            "depthCm", "10",
            "determinations[3].analyte", "potassium",
            "determinations[3].unit", "mg/kg",
            "determinations[3].value", "much");
    HttpResponse<String> answer = send("soil-test", "lawn", fields);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains("id=\"f-determinations-0-value-fault\"", "value=\"much\"", "is not a number")
        .containsPattern("f-determinations-1-analyte[^§]*?value=\"pH\" selected")
        .containsPattern("f-determinations-2-analyte[^§]*?value=\"organic matter\" selected");
  }

  @Test
  void whatARowIsOfStaysTakenOutWhenTheFormComesBackWithAFault() throws Exception {
    Map<String, String> fields =
        Map.of(
            "day", "2015-04-01",
            "depthCm", "10",
            "determinations[0].analyte", "pH",
            "determinations[0].unit", "pH",
            "determinations[1].analyte", "",
            "determinations[1].unit", "mg/kg",
            "determinations[1].value", "12",
            "determinations[2].analyte", "",
            "determinations[2].unit", "mg/kg");
    HttpResponse<String> answer = send("soil-test", "lawn", fields);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains("id=\"f-laboratory-fault\"", "value=\"12\"")
        .containsPattern("f-determinations-1-analyte[^§]*?value=\"pH\" selected")
        .doesNotContain("value=\"magnesium\" selected", "value=\"calcium\" selected");
  }

  @Test
  void aFeedWithoutItsDayIsToldBesideThatDay() throws Exception {
    HttpResponse<String> answer =
        send("programme", "lawn", Map.of("from", "2015-05-28", "feeding[0].fastNGPerM2", "2"));
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains("id=\"f-feeding-0-on-fault\"", "It is missing")
        .doesNotContain("dayOfYear");
  }

  private SoilTestSheet soilTest() {
    List<Sheet<SoilTestSheet>> all =
        book.read(reading -> reading.ofLawn(Kind.SOIL_TEST, owner("lawn")));
    return all.get(all.size() - 1).content();
  }
}
