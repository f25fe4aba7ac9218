package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import leafturn.records.people.Role;
import org.junit.jupiter.api.Test;

/** Who may rate a trial of blind raters is told of no plot which arm it bears before its end. */
class BlindRatersTest extends TwoYardsSite {
  private static final List<String> TELLING =
      List.of("/layout/layout.pdf", "/layout/map.svg", "/layout/layout.geojson", "/findings.pdf");

  private void read(String trial) {
    int value = 5;
    Map<String, String> sent = TwoYards.rating("Ada", Integer.toString(value));
    for (String plot : List.of("B1-2", "B2-1", "B2-2")) {
      value++;
      sent.put("plot-" + plot, Integer.toString(value));
    }
    assertThat(yards.post(adviser, trial + "/readings/enter", sent).statusCode()).isEqualTo(303);
  }

  /** Pages, files and what they say to a helper. */
  private void tellsNoArms(Browser helper, String trial) {
    for (String page : List.of("/layout", "/findings")) {
      HttpResponse<String> answer = helper.get(trial + page);
      assertThat(answer.statusCode()).as(page).isEqualTo(200);
      assertThat(answer.body())
          .as(page)
          .contains("Raters of this trial do not know the arms")
          .doesNotContain("returned", "collected", "data.zip");
    }
    for (String page : List.of("/readings", "/readings/enter?date=2015-05-04&outcome=quality")) {
      assertThat(helper.get(trial + page).body()).as(page).doesNotContain("returned", "collected");
    }
    for (String file : TELLING) {
      assertThat(helper.get(trial + file).statusCode()).as(file).isEqualTo(403);
    }
    assertThat(helper.get(trial + "/data.zip").statusCode()).isEqualTo(403);
    assertThat(helper.get(trial + "/plan").statusCode()).isEqualTo(403);
    assertThat(helper.get(trial).body()).doesNotContain(">Seed<", "SHA-256");
    assertThat(helper.get(trial + "/layout/field-sheets.pdf").statusCode()).isEqualTo(200);
    assertThat(helper.get(trial + "/layout/labels.pdf").statusCode()).isEqualTo(200);
  }

  @Test
  void aHelperLearnsTheArmsOnlyOnceTheTrialHasEnded() {
    String trial = yards.planned();
    Browser helper = site.signedIn(Role.HELPER);
    tellsNoArms(helper, trial);
    yards.post(adviser, trial + "/freeze", Map.of());
    read(trial);
    tellsNoArms(helper, trial);
    assertThat(adviser.get(trial + "/layout").body()).contains("returned");
    assertThat(adviser.get(trial).body()).contains(">Seed<", "SHA-256");

    yards.post(adviser, trial + "/end", Map.of("why", "The yard was sold"));
    assertThat(helper.get(trial + "/layout").body()).contains("Treatment", "returned");
    assertThat(helper.get(trial + "/findings").body()).contains("What may be concluded");
    assertThat(helper.get(trial + "/layout/map.svg").statusCode()).isEqualTo(200);
  }

  @Test
  void whereRatersMayKnowTheArmsAHelperMayToo() {
    Map<String, String> plan = yards.plan();
    plan.put("protocol.ratersBlind", "false");
    String trial = yards.planned(plan);
    Browser helper = site.signedIn(Role.HELPER);
    assertThat(helper.get(trial + "/layout").body()).contains("Treatment", "returned");
  }
}
