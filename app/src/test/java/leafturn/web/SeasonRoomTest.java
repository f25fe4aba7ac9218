package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.MonthDay;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.model.lawn.CalendarDay;
import leafturn.records.ProgrammeFields;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Changed;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.ProgrammeSheet;
import leafturn.records.sheet.Property;
import org.junit.jupiter.api.Test;

/** A season plan on the site: asked for, followed, stopped, weighed and adopted. */
class SeasonRoomTest extends DemoSite {
  private static final String LAWN = "/lawns/linden-house-back";
  private static final String PAGE = LAWN + "/season";

  private static Map<String, String> own() {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("search", "false");
    fields.put("programmes[0].name", "Twice a week, by the rules");
    fields.put("programmes[0].mowing.trigger.everyDays", "4");
    fields.put("programmes[0].mowing.clippings.byRules", "true");
    return fields;
  }

  private String ended() throws Exception {
    for (int look = 0; look < 600; look++) {
      String page = asking.get(PAGE).body();
      if (!page.contains("The season plan is being made")) {
        return page;
      }
      Thread.sleep(50);
    }
    throw new AssertionError("the plan does not end");
  }

  @Test
  void theLawnsPageLeadsToAPlanThatCanBeMadeWeighedAndAdopted() throws Exception {
    assertThat(asking.get(LAWN).body()).contains(PAGE, "Which programme for a year?");
    assertThat(asking.get(PAGE).body())
        .contains("Make the plan", "Cut height in June", "Cut height in August")
        .doesNotContain("Adopt", "in days");
    assertThat(asking.postForm(PAGE, own()).statusCode()).isEqualTo(303);
    String page = ended();
    assertThat(page)
        .contains(
            "By your aims",
            "Water given",
            "Aims as weighted: less work 2",
            "Twice a week, by the rules",
            "As now",
            "Work in a year",
            "Nutrients on an area in a year",
            "large ones bear their number in the tables",
            "<a href=\"/sources\">Sources</a>")
        .containsPattern("\\d\u202fg/m²\u00a0N a year")
        .containsPattern("(?s)Twice a week, by the rules.*Twice a week, by the rules.*Twice a week")
        .contains(
            "Of 2 programmes",
            "Twice a week, by the rules: every 4 days to 64",
            " · plan of Thursday 28 May 2015",
            "Over 100 possible seasons",
            "<svg class=\"season-wide\"")
        .doesNotContain("members");
    HttpResponse<String> progress = asking.get(PAGE + "/progress");
    assertThat(progress.body()).contains("2 of 2 programmes").doesNotContain("<html");
    assertThat(progress.headers().firstValue("HX-Refresh")).contains("true");
    assertThat(asking.get(PAGE + "?work=8&growth=0&up=nitrate").body())
        .contains("nitrate N lost, g/m² a year")
        .contains("<option value=\"8\" selected>");

    HttpResponse<String> weightless =
        asking.get(
            PAGE
                + "?work=0&carrying=0&feed=0&keeping=0&nitrate=0&thatch=0&clumps=0&third-rule=0&growth=0&up=thatch");
    assertThat(weightless.statusCode()).isEqualTo(422);
    assertThat(weightless.body())
        .contains(
            "role=\"alert\">No aim has a weight above 0; give one at least. The answer here is by the usual weights",
            "id=\"weights-fault\">No aim has a weight above 0; give one at least.",
            "<option value=\"thatch\" selected>")
        .doesNotContain("<option value=\"1\" selected>", "<option value=\"4\" selected>");

    assertRefused("1999-01-01", "1 January 1999 is before the programme of now began to hold");
    assertRefused("2017-05-29", "29 May 2017 is too far ahead for a plan of one year");
    assertRefused("1 June", "write year, month and day as in 2015-05-28");
    assertThat(programmes()).hasSize(1);

    HttpResponse<String> adopted =
        asking.postForm(PAGE + "/adopt", Map.of("number", "1", "from", "2015-06-01"));

    assertThat(adopted.statusCode()).isEqualTo(303);
    assertThat(Asking.location(adopted).toString()).startsWith("/sheets/");
    List<Sheet<ProgrammeSheet>> programmes = programmes();
    ProgrammeSheet last = programmes.get(programmes.size() - 1).content();
    assertThat(programmes).hasSize(2);
    assertThat(last.from()).hasToString("2015-06-01");
    assertThat(last.mowing().clippings().byRules()).isTrue();
    assertThat(last.mowing().trigger()).isEqualTo(new ProgrammeFields.Trigger(4, null));
    assertThat(last.feeding()).isEqualTo(programmes.get(0).content().feeding());
    assertThat(asking.get(PAGE).body())
        .contains("Now is: ", "From 1 June 2015 on the lawn will be kept by another programme");

    String height = heightNow();
    asking.postForm(PAGE + "/adopt", Map.of("number", "1", "from", "2015-05-28"));
    assertThat(heightNow()).isEqualTo(height);
    assertThat(asking.get(PAGE).body())
        .contains("This plan was made for the lawn as it was kept before")
        .contains("“Twice a week, by the rules” (from 28 May 2015 on)");
  }

  /** The height of the grass as the lawn's page tells it. */
  private String heightNow() throws Exception {
    Matcher told = Pattern.compile("(\\d+)\u202fmm today").matcher(asking.get(LAWN).body());
    assertThat(told.find()).isTrue();
    return told.group(1);
  }

  private void assertRefused(String from, String sentence) throws Exception {
    HttpResponse<String> answer =
        asking.postForm(PAGE + "/adopt", Map.of("number", "1", "from", from));
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains(sentence, "id=\"adopt-from-fault\"", "name=\"from\" value=\"" + from + "\"");
  }

  private List<Sheet<ProgrammeSheet>> programmes() {
    return book.read(
        reading -> {
          String lawn = reading.at(Kind.LAWN, "linden-house-back").orElseThrow().id();
          return reading.ofLawn(Kind.PROGRAMME, lawn);
        });
  }

  @Test
  void aPlanCanBeStopped() throws Exception {
    Map<String, String> asked = own();
    asked.put("search", "true");
    asked.put("programmes[0].name", "My own, every week");
    assertThat(asking.postForm(PAGE, asked).statusCode()).isEqualTo(303);
    assertThat(asking.get(PAGE).body()).contains("being made", "<progress", "Stop");

    assertThat(asking.postForm(PAGE + "/stop").statusCode()).isEqualTo(303);

    assertThat(ended())
        .contains("The plan was stopped.", "Make the plan", "value=\"My own, every week\"");
    assertThat(asking.postForm(PAGE + "/adopt", Map.of("number", "1")).statusCode()).isEqualTo(404);
  }

  @Test
  void aProgrammeOfOnesOwnHasItsFeedPlan() throws Exception {
    Map<String, String> fed = own();
    fed.put("programmes[0].feeding[1].on", "05-20");
    fed.put("programmes[0].feeding[1].slowNGPerM2", "700");
    HttpResponse<String> refused = asking.postForm(PAGE, fed);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("from 0 to 100", "value=\"700\"");

    fed.remove("programmes[0].feeding[1].on");
    fed.put("programmes[0].feeding[1].slowNGPerM2", "7");
    assertThat(asking.postForm(PAGE, fed).body())
        .containsPattern("It is missing; give .{1,6}MM-DD.{1,6} or a day of the year from 1 to 366")
        .doesNotContain(".on: ", ".dayOfYear");
    fed.put("programmes[0].feeding[1].on", "05-20");

    fed.put("programmes[0].feeding[1].slowNGPerM2", "7");
    asking.postForm(PAGE, fed);
    ended();
    asking.postForm(PAGE + "/adopt", Map.of("number", "1", "from", "2015-06-01"));

    assertThat(programmes().get(1).content().feeding())
        .containsExactly(
            new ProgrammeFields.Feeding(
                null, CalendarDay.on(MonthDay.of(5, 20)), null, 7.0, null, null));
  }

  @Test
  void southOfTheEquatorTheFormsHaveThatSummerAndThatSeason() throws Exception {
    book.write(
        "test",
        writing -> {
          String id = writing.at(Kind.LAWN, "linden-house-back").orElseThrow().content().property();
          Sheet<Property> house = writing.find(Kind.PROPERTY, id).orElseThrow();
          return Changed.revised(writing, house, "/latitudeDeg = -40.78");
        });

    assertThat(asking.get(PAGE).body())
        .contains("Cut height in December", "Cut height in January", "Cut height in February")
        .doesNotContain("Cut height in June");
    String lawn =
        book.read(reading -> reading.at(Kind.LAWN, "linden-house-back").orElseThrow().id());
    assertThat(asking.get("/sheets/new?kind=programme&lawn=" + lawn).body())
        .contains("Left empty: 09-14", "Left empty: 06-12")
        .doesNotContain("03-16");
  }

  @Test
  void aStoppedPlanLeavesTheOneBeforeIt() throws Exception {
    asking.postForm(PAGE, own());
    ended();
    Map<String, String> asked = own();
    asked.put("search", "true");
    asked.put("programmes[0].name", "My own, every week");
    asking.postForm(PAGE, asked);
    asking.postForm(PAGE + "/stop");

    assertThat(ended())
        .contains(
            "The plan was stopped. What stands here is the plan made before it.",
            "By your aims",
            "Of 2 programmes",
            "value=\"My own, every week\"");
    assertThat(
            asking
                .postForm(PAGE + "/adopt", Map.of("number", "1", "from", "2015-06-01"))
                .statusCode())
        .isEqualTo(303);
  }

  @Test
  void wrongProgrammesAndDaysAreToldAndNothingIsWritten() throws Exception {
    Map<String, String> wrong = own();
    wrong.put("programmes[0].mowing.heightMm", "2");
    HttpResponse<String> refused = asking.postForm(PAGE, wrong);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("from 3 to 200", "value=\"2\"", "No plan is made yet: one thing")
        .doesNotContain("Not saved yet");

    asking.postForm(PAGE, own());
    ended();
    assertThat(asking.postForm(PAGE, wrong).body())
        .containsPattern(
            "(?s)class=\"faults\" role=\"alert\" tabindex=\"-1\" autofocus.*By your aims")
        .containsOnlyOnce("Cut height in June");
    HttpResponse<String> noDay =
        asking.postForm(PAGE + "/adopt", Map.of("number", "1", "from", "soon"));
    assertThat(noDay.statusCode()).isEqualTo(422);
    assertThat(noDay.body()).contains("The first day of the programme");
    assertThat(
            asking
                .postForm(PAGE + "/adopt", Map.of("number", "77", "from", "2015-06-01"))
                .statusCode())
        .isEqualTo(400);
    assertThat(programmes()).hasSize(1);
  }

  @Test
  void aLawnThatIsNotThereHasNoPlan() throws Exception {
    assertThat(asking.get("/lawns/nowhere/season").statusCode()).isEqualTo(404);
    assertThat(asking.get(PAGE + "/progress").statusCode()).isEqualTo(404);
  }
}
