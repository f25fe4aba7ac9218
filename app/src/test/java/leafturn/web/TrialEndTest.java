package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import leafturn.records.Examples;
import leafturn.records.people.Role;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookPlan;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When a trial may be ended. */
class TrialEndTest {
  @TempDir Path folder;
  private PeopledSite site;

  @BeforeEach
  void open() {
    site = new PeopledSite(folder, Clock.systemUTC());
  }

  @AfterEach
  void close() {
    site.close();
  }

  /** A frozen trial with two planned days. */
  private String trial(LocalDate first, LocalDate last) throws IOException {
    String text = Files.readString(Examples.file("split-yards.trial.json"));
    ObjectNode plan = (ObjectNode) new ObjectMapper().readTree(text);
    ((ObjectNode) plan.path("season")).put("from", first.toString()).put("to", last.toString());
    plan.putArray("dates").add(first.toString()).add(last.toString());
    ((ObjectNode) plan.path("cores")).putArray("dates").add(first.toString());
    TrialSheet planned = TrialSheet.planned(plan, List.of());
    TrialSheet.Frozen frozen =
        new TrialSheet.Frozen("2015-04-01T08:00:00Z", "Ada", BookPlan.hash(planned), null);
    TrialSheet sheet = planned.frozenAs(frozen);
    String id = UUID.randomUUID().toString();
    site.book.write("Ada", writing -> writing.add(Kind.TRIAL, id, sheet));
    return id;
  }

  private HttpResponse<String> end(String id, String why) {
    Browser adviser = site.signedIn(Role.ADVISER);
    return adviser.post("/trials/" + id + "/end", Map.of("why", why, "_token", adviser.token()));
  }

  private boolean ended(String id) {
    return site.book.read(reading -> reading.find(Kind.TRIAL, id)).orElseThrow().content().ended()
        != null;
  }

  @Test
  void notBeforeItsFirstDay() throws IOException {
    LocalDate today = LocalDate.now(Clock.systemUTC());
    String id = trial(today.plusDays(20), today.plusDays(90));
    HttpResponse<String> answer = end(id, "The yard was sold");
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("has not begun: its first planned day is");
    assertThat(ended(id)).isFalse();
  }

  @Test
  void beforeItsLastDayOnlyWithAReason() throws IOException {
    String id = trial(LocalDate.of(2015, 5, 4), LocalDate.of(2030, 5, 4));
    HttpResponse<String> answer = end(id, " ");
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("before its last planned day", "say why");
    assertThat(ended(id)).isFalse();
    assertThat(end(id, "The yard was sold").statusCode()).isEqualTo(303);
    assertThat(ended(id)).isTrue();
  }
}
