package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.regex.Pattern;
import leafturn.records.Examples;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialReadingsSheet;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookPlan;
import leafturn.records.trial.PackedTrial;
import leafturn.records.trial.TrialPackageFile;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.design.layout.LaidPlot;
import leafturn.trials.design.layout.TrialLayout;
import leafturn.trials.observation.Reading;
import org.junit.jupiter.api.Test;

/** What a trial of the book has found, before and after its season. */
class TrialFindingsRoomTest extends DemoSite {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static ObjectNode plan() throws IOException {
    return (ObjectNode) JSON.readTree(Files.readString(Examples.file("split-yards.trial.json")));
  }

  private String trial(ObjectNode plan, boolean ended) {
    TrialSheet planned = TrialSheet.planned(plan, List.of());
    TrialSheet.Frozen frozen =
        new TrialSheet.Frozen("2015-04-01T08:00:00Z", "Ada", BookPlan.hash(planned), null);
    LocalDate end = ended ? LocalDate.of(2026, 10, 31) : null;
    TrialSheet sheet = new TrialSheet(plan, List.of(), frozen, end, null, null, null);
    return book.<String>write(
        "Ada",
        writing -> {
          String id = UUID.randomUUID().toString();
          writing.add(Kind.TRIAL, id, TrialSheet.planned(plan, List.of()));
          return writing.revise(Kind.TRIAL, id, 1, sheet).id();
        });
  }

  private static List<Reading> readings(TrialPlan plan, String outcome) {
    SplittableRandom random = new SplittableRandom(20260401);
    List<Reading> readings = new ArrayList<>();
    for (LaidPlot plot : TrialLayout.of(plan).plots()) {
      double half = plot.unit().lawn() * 0.4 + (plot.unit().arm().equals("returned") ? 0.3 : 0);
      for (LocalDate date : plan.observing().dates()) {
        double value = 4 + half + 1.2 * random.nextDouble();
        readings.add(
            Reading.own(plot.code(), date, outcome, Long.toString(Math.round(value)), "Ada"));
      }
    }
    return readings;
  }

  private String withReadings(boolean ended) throws IOException {
    ObjectNode plan = plan();
    String id = trial(plan, ended);
    TrialSheet sheet = TrialSheet.planned(plan, List.of());
    List<Reading> readings = readings(BookPlan.of(sheet), "quality");
    TrialReadingsSheet read = new TrialReadingsSheet(id, null, null, null, readings, null);
    book.write(
        "Ada", writing -> writing.add(Kind.TRIAL_READINGS, UUID.randomUUID().toString(), read));
    return id;
  }

  @Test
  void anEndedTrialHasItsVerdictPicturesAndTables() throws Exception {
    String page = visitor.read("/trials/" + withReadings(true) + "/findings");
    assertThat(page)
        .containsPattern("<h1>(Undecided|Quality (differs|is equivalent))")
        .contains("Yards: 8 started, 8 with a whole season.", "trial-wide", "trial-narrow")
        .contains("The layout was drawn once before the plan was frozen.")
        .contains("margin that matters: ±0.5", "SHA-256 is")
        .contains("the paired result and the mixed model of one season", "All values")
        .contains("There are no readings of soil_potassium")
        .doesNotContain("style=", "no difference", "no effect")
        .contains("<details class=\"on-paper\">")
        .doesNotContain("<details>");
    assertThat(Pattern.compile("role=\"region\" aria-label=\"([^\"]+)\"").matcher(page).results())
        .extracting(each -> each.group(1))
        .hasSizeGreaterThan(3)
        .doesNotHaveDuplicates()
        .allMatch(name -> name.startsWith("Quality, 1-9: "));
    List<String> told =
        Pattern.compile("<(?:li|p)>([^<]{40,})</")
            .matcher(page)
            .results()
            .map(each -> each.group(1))
            .toList();
    assertThat(told).hasSizeGreaterThan(10).doesNotHaveDuplicates();
    assertThat(page).containsOnlyOnce("95\u00a0% interval ");
  }

  @Test
  void beforeItsEndNothingIsTested() throws Exception {
    String page = visitor.read("/trials/" + withReadings(false) + "/findings");
    assertThat(page)
        .contains("The season is not over", "nothing is tested")
        .doesNotContainPattern("p [=<] ?0");
  }

  @Test
  void withoutReadingsThereIsASentence() throws Exception {
    String page = visitor.read("/trials/" + trial(plan(), false) + "/findings");
    assertThat(page)
        .contains("Nothing can be told yet", "There are no readings of quality", "data.zip");
  }

  @Test
  void aTrialWithoutReadingsIsPackedAndReadBackToo() throws Exception {
    String id = trial(plan(), false);
    byte[] zip = new Asking(server).bytes("/trials/" + id + "/data.zip").body();
    PackedTrial back = TrialPackageFile.open("trial.zip", zip).read();
    assertThat(back.readings()).isEmpty();
    assertThat(back.trial().name()).isEqualTo("Eight split yards");
  }

  @Test
  void theDocumentIsAPdf() throws Exception {
    var answer = visitor.ask("/trials/" + withReadings(true) + "/findings.pdf");
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.headers().firstValue("Content-Type")).contains("application/pdf");
    assertThat(visitor.ask("/trials/00000000-0000-0000-0000-000000000000/findings").statusCode())
        .isEqualTo(404);
  }
}
