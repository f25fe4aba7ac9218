package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.records.book.StationDay;
import leafturn.records.book.StationDays;
import leafturn.records.sheet.Kind;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class WeatherRoomTest extends DemoSite {
  private static final Pattern BEFORE = Pattern.compile("name=\"before\" value=\"([^\"]+)\"");

  private String station;

  @BeforeEach
  void find() {
    station = book.read(reading -> reading.all(Kind.STATION).get(0).id());
  }

  @Test
  void stationsAreListedWithSpanAndUse() throws Exception {
    assertThat(asking.get("/weather").body())
        .contains("New York", "1,461 days from 1\u00a0January 2012 to 31\u00a0December 2015.")
        .contains("Linden House, Quarry Cottage", "stand in");
  }

  @Test
  void aStationShowsItsMonthsAndLatestDays() throws Exception {
    assertThat(asking.get("/weather/" + station).body())
        .contains("No gaps", "31\u00a0Dec\u00a02015", "Earlier months", "Jan\u00a02012")
        .contains("value=\"2016-01-01\"");
    assertThat(asking.get("/weather/" + Kind.STATION).statusCode()).isEqualTo(404);
  }

  @Test
  void aNewStationBeginsEmptyAndTakesDays() throws Exception {
    HttpResponse<String> made =
        asking.postForm(
            "/weather/new", Map.of("name", "Hill", "origin", "own gauge", "windHeightM", "2"));
    assertThat(made.statusCode()).isEqualTo(303);
    String address = Asking.location(made).getPath();
    assertThat(asking.get(address).body()).contains("<h1>Hill</h1>", "Its record is empty.");
    Map<String, String> day =
        Map.of("day", "2026-05-03", "minimumC", "4,5", "maximumC", "15", "rainMm", "0");
    assertThat(asking.postForm(address + "/days", day).statusCode()).isEqualTo(303);
    assertThat(asking.postForm(address + "/days", day).statusCode()).isEqualTo(303);
    Map<String, String> other = Map.of("day", "2026-05-03", "minimumC", "5");
    HttpResponse<String> known = asking.postForm(address + "/days", other);
    assertThat(known.statusCode()).isEqualTo(409);
    assertThat(known.body()).contains("The book has this day already", "value=\"5\"");
    Map<String, String> later =
        Map.of("day", "2026-05-06", "minimumC", "4", "maximumC", "15", "rainMm", "1");
    asking.postForm(address + "/days", later);
    assertThat(asking.get(address).body())
        .contains("4\u00a0May 2026 to 5\u00a0May 2026, 2 days", "2 of 4");
  }

  @Test
  void faultsOfADayAndAStationStandBesideTheirFields() throws Exception {
    HttpResponse<String> refused =
        asking.postForm(
            "/weather/" + station + "/days",
            Map.of("day", "2016-01-01", "minimumC", "20", "maximumC", "10"));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("10 lies below the lowest value of the day, 20");
    assertThat(asking.postForm("/weather/new", Map.of("windHeightM", "x")).body())
        .contains("\"x\" is not a number", "give what its users call it.");
  }

  @Test
  void aDayIsCorrectedUnlessSomebodyElseWasQuicker() throws Exception {
    String page = "/weather/" + station + "/days/2015-05-20";
    String before = before(asking.get(page).body());
    Map<String, String> values = Map.of("before", before, "minimumC", "9", "maximumC", "21");
    assertThat(asking.postForm(page, values).statusCode()).isEqualTo(303);
    StationDay corrected =
        book.read(
            reading -> StationDays.on(reading, station, LocalDate.of(2015, 5, 20)).orElseThrow());
    assertThat(corrected.values())
        .isEqualTo(Map.of(Quantity.MINIMUM_C, 9.0, Quantity.MAXIMUM_C, 21.0));
    HttpResponse<String> late = asking.postForm(page, values);
    assertThat(late.statusCode()).isEqualTo(409);
    assertThat(late.body()).contains("Somebody changed this day meanwhile");
    assertThat(asking.get("/weather/" + station).body()).contains("20\u00a0May 2015");
    HttpResponse<String> found = asking.get("/weather/" + station + "/days?day=2015-05-20");
    assertThat(found.statusCode()).isEqualTo(303);
    assertThat(asking.get("/weather/" + station + "/days?day=2020-01-01").body())
        .contains("The book does not have this day; type it in.");
  }

  @Test
  void newDaysChangeTheAdvice() throws Exception {
    String lawn = "/lawns/linden-house-back";
    String before = asking.get(lawn).body();
    assertThat(asking.get(lawn).body()).isEqualTo(before);
    String day = "/weather/" + station + "/days/2015-05-27";
    String known = before(asking.get(day).body());
    asking.postForm(
        day, Map.of("before", known, "minimumC", "17", "maximumC", "28", "rainMm", "90"));
    assertThat(asking.get(lawn).body()).isNotEqualTo(before);
  }

  @Test
  void aStationIsChangedUnlessSomebodyElseWasQuicker() throws Exception {
    String page = "/weather/" + station + "/edit";
    assertThat(asking.get(page).body()).contains("value=\"New York\"");
    Map<String, String> fields =
        Map.of("version", "1", "name", "Park", "origin", "NOAA", "windHeightM", "2");
    assertThat(asking.postForm(page, fields).statusCode()).isEqualTo(303);
    HttpResponse<String> late = asking.postForm(page, fields);
    assertThat(late.statusCode()).isEqualTo(409);
    assertThat(late.body()).contains("changed this station meanwhile", "value=\"2\"");
  }

  private static String before(String page) {
    Matcher before = BEFORE.matcher(page);
    assertThat(before.find()).isTrue();
    return before.group(1).replace("&#34;", "\"").replace("&quot;", "\"");
  }
}
