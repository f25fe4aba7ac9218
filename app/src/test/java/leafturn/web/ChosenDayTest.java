package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;

/** Advice for a day that somebody chose, of the demo book, whose day is 28 May 2015. */
class ChosenDayTest extends DemoSite {
  private static final String LAWN = "/lawns/linden-house-back";

  @Test
  void theLawnsPageAsksForADay() throws Exception {
    assertThat(asking.get(LAWN).body())
        .contains("Advice for another day", "name=\"day\" max=\"2015-06-18\"");
  }

  @Test
  void aDayToComeIsTakenForTheOnlyOneToMowOn() throws Exception {
    assertThat(asking.get(LAWN + "?day=2015-06-02").body())
        .contains(
            "Advice for Tuesday 2 June 2015",
            "if nobody can mow before this day",
            "Back to the advice for today")
        .contains("<h2 id=\"answer\">Wait, then raise the deck")
        .containsPattern("to 75.mm on Tuesday")
        .containsPattern("to 64.mm on Friday")
        .contains("further cuts come on the usual days")
        .doesNotContain("on Tuesday 9 June");
  }

  @Test
  void aPastDayIsAdvisedAsItStoodThen() throws Exception {
    String then = asking.get(LAWN + "?day=2015-05-20").body();
    assertThat(then)
        .contains("Advice for Wednesday 20 May 2015", "As it would have been given then")
        .contains("log entry after 2015-05-20 left out");
    assertThat(asking.get(LAWN).body()).doesNotContain("left out");
  }

  @Test
  void todayIsThePageItself() throws Exception {
    assertThat(asking.get(LAWN + "?day=2015-05-28").body()).contains("This lawn");
  }

  @Test
  void daysThatAreNoneAreFaultsWithWhatWouldBeRight() throws Exception {
    assertRefused("2015-06-19", "19 June 2015 is further than advice looks ahead");
    assertRefused("soon", "is not a date");
    assertRefused(
        "2009-05-01", "the day asked for is 2009-05-01, but must lie on 2012-01-02 or later");
    assertThat(asking.get("/lawns/nowhere?day=2015-05-20").statusCode()).isEqualTo(404);
  }

  private void assertRefused(String day, String sentence) throws Exception {
    HttpResponse<String> answer = asking.get(LAWN + "?day=" + day);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains("No advice can be given for this day", sentence, "id=\"chosen-day-fault\"");
  }
}
