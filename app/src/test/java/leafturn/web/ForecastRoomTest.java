package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import leafturn.records.Examples;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.ForecastSheet;
import leafturn.records.sheet.Kind;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A forecast from a file: looked at, used by the advice, and let go when it ends. */
class ForecastRoomTest extends DemoSite {
  private static final String LAWN = "/lawns/linden-house-back";
  private static final String HEADER = "date,temp_max,temp_min,rain_mm\n";
  private static final String DAYS =
      HEADER + "2015-05-28,29,19,0\n2015-05-29,30,20,0\n2015-05-30,28,18,14\n";

  private String station = "";

  @BeforeEach
  void find() {
    station = "/weather/" + book.<String>read(reading -> reading.all(Kind.STATION).get(0).id());
  }

  private HttpResponse<String> look(String origin, String csv) throws Exception {
    return visitor.sendWithFile(
        station + "/forecast",
        Map.of("origin", origin, "issued", "2015-05-28"),
        "file",
        "forecast.csv",
        csv);
  }

  private HttpResponse<String> use(String csv) throws Exception {
    return visitor.send(
        station + "/forecast",
        station + "/forecast/use",
        Map.of("origin", "The county’s service", "issued", "2015-05-28", "text", csv));
  }

  private List<Sheet<ForecastSheet>> kept() {
    return book.read(reading -> reading.all(Kind.FORECAST));
  }

  @Test
  void aForecastIsLookedAtBeforeItIsUsed() throws Exception {
    HttpResponse<String> looked = look("The county’s service", DAYS);
    assertThat(looked.statusCode()).isEqualTo(200);
    assertThat(looked.body())
        .contains("This is what the file says", "Fri 29\u00a0May", "Use this forecast")
        .doesNotContain("style=");
    assertThat(kept()).isEmpty();
  }

  @Test
  void everyFaultOfTheFileIsToldAndNothingIsKept() throws Exception {
    HttpResponse<String> looked = look("", HEADER + "2015-05-28,29,39,0\n2015-05-30,200,18,14\n");
    assertThat(looked.statusCode()).isEqualTo(422);
    assertThat(looked.body())
        .contains("lies below the minimum", "2015-05-29 is missing", "is out of range")
        .contains("give whose forecast it is", "<ul class=\"fault\" id=\"f-file-fault\">");
    assertThat(look("", "").body())
        .contains("Choose a file that is not empty", "give whose forecast it is");
    assertThat(look("", DAYS).body()).contains("give whose forecast it is");
    assertThat(kept()).isEmpty();
  }

  @Test
  void aForecastOfDaysThatHavePassedIsNotTaken() throws Exception {
    String passed = HEADER + "2015-05-20,29,19,0\n2015-05-21,30,20,0\n";
    assertThat(look("The county’s service", passed).body())
        .contains("All its days have passed, the last of them on Thursday 21")
        .doesNotContain("Use this forecast");
    assertThat(use(passed).statusCode()).isEqualTo(422);
    assertThat(kept()).isEmpty();
  }

  @Test
  void adviceFollowsItAndSaysUntilWhen() throws Exception {
    assertThat(visitor.read(LAWN)).doesNotContain("follow the forecast");
    assertThat(use(DAYS).statusCode()).isEqualTo(303);
    assertThat(visitor.read(LAWN))
        .contains("Until 30 May the possible seasons follow the forecast of 28 May")
        .contains("The county’s service");
    assertThat(visitor.read(station))
        .contains(
            "Advice follows it until then", "Sat 30\u00a0May", "Correct or withdraw this one");
  }

  @Test
  void aForecastFromTomorrowOnCountsAndTheRoundSaysSo() throws Exception {
    assertThat(visitor.read("/")).contains("this round knows nothing yet");
    use(Files.readString(Examples.file("forecast.csv")));
    assertThat(visitor.read(station)).contains("Advice follows it until then");
    assertThat(visitor.read(LAWN)).contains("Until 4 June the possible seasons follow");
    assertThat(visitor.read("/"))
        .contains("The next seven days follow a forecast until", "less by the day")
        .doesNotContain("knows nothing yet", "no forecast");
  }

  @Test
  void aForecastThatBeginsLaterIsNotFollowedAndThatIsSaid() throws Exception {
    use(HEADER + "2015-05-30,29,19,0\n2015-05-31,30,20,0\n");
    assertThat(visitor.read(LAWN))
        .contains("The forecast is not followed: the forecast begins on 2015-05-30");
    assertThat(visitor.read(station)).contains("It begins after tomorrow");
  }

  @Test
  void rainWithoutAChanceIsAFault() throws Exception {
    HttpResponse<String> looked =
        look(
            "The county’s service",
            "date,temp_max,temp_min,rain_mm,rain_chance_percent\n2015-05-28,29,19,10,0\n");
    assertThat(looked.statusCode()).isEqualTo(422);
    assertThat(looked.body()).contains("10\u00a0mm of rain stand beside a chance of 0\u00a0%");
  }

  @Test
  void aForecastThatHasEndedIsNotFollowedAndThatIsSaid() throws Exception {
    LocalDate first = LocalDate.of(2015, 5, 24);
    ForecastSheet.Day day = new ForecastSheet.Day(19, 29, 0.0, null, null);
    ForecastSheet ended =
        new ForecastSheet(
            station.replace("/weather/", ""), first, "The county’s", first, List.of(day, day));
    book.write("Wren", writing -> writing.add(Kind.FORECAST, UUID.randomUUID().toString(), ended));
    assertThat(visitor.read(LAWN)).contains("ended on 25 May: the possible seasons follow none");
    assertThat(visitor.read(station)).contains("It has expired");
  }

  @Test
  void aForecastThatIsWithdrawnNoLongerCounts() throws Exception {
    use(DAYS);
    Sheet<ForecastSheet> sheet = kept().get(0);
    visitor.send(
        "/sheets/" + sheet.id() + "/withdraw",
        "/sheets/" + sheet.id() + "/withdraw",
        Map.of("version", "1"));
    assertThat(visitor.read(LAWN)).doesNotContain("follow the forecast");
  }
}
