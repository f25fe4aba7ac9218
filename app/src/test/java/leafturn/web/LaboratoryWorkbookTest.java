package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.records.Examples;
import leafturn.records.book.Sheet;
import leafturn.records.exchange.TrialGround;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.table.SampleWorkbook;
import leafturn.records.trial.BookPlan;
import leafturn.records.trial.TrialGrounds;
import leafturn.trials.observation.Reading;
import org.junit.jupiter.api.Test;

/** A laboratory's workbook: its mapping is entered, the file looked at and its values taken in. */
class LaboratoryWorkbookTest extends DemoSite {
  private static final Pattern SEEN = Pattern.compile("name=\"seen\" value=\"([^\"]+)\"");
  private static final ObjectMapper JSON = new ObjectMapper();

  @SuppressWarnings("NullAway.Init") // prepare() is called before each test
  private Sheet<TrialSheet> trial;

  /** The example in a season before the day of the demonstration, frozen and not ended. */
  @Override
  void prepare() {
    try {
      String text = Files.readString(Examples.file("split-yards.trial.json"));
      ObjectNode plan = (ObjectNode) JSON.readTree(text.replace("2026-", "2014-"));
      TrialSheet planned = TrialSheet.planned(plan, List.of());
      TrialSheet.Frozen seal =
          new TrialSheet.Frozen("2014-04-01T08:00:00Z", "Ada", BookPlan.hash(planned), null);
      trial =
          book.write(
              "Ada",
              writing ->
                  writing.add(Kind.TRIAL, UUID.randomUUID().toString(), planned.frozenAs(seal)));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String laboratory(Asking asking) throws Exception {
    Map<String, String> form = new LinkedHashMap<>();
    form.put("name", "Fen Laboratory");
    form.put("dates", "day first");
    form.put("duplicates", "repeated rows");
    form.put("columns[0].heading", "Bag");
    form.put("columns[0].holds", "sample");
    form.put("columns[1].heading", "K");
    form.put("columns[1].holds", "value");
    form.put("columns[1].outcome", "soil_potassium");
    form.put("columns[1].unit", "ppm");
    form.put("columns[1].method", "Mehlich-3");
    form.put("columns[1].detectionLimit", "5");
    HttpResponse<String> kept = asking.postForm("/laboratories/new", form);
    assertThat(kept.statusCode()).as(kept.body()).isEqualTo(303);
    String address = asking.get("/laboratories").body();
    Matcher id = Pattern.compile("/laboratories/([0-9a-f-]{36})").matcher(address);
    assertThat(id.find()).isTrue();
    return id.group(1);
  }

  private static String text(String cell) {
    return "<c t=\"inlineStr\"><is><t>%s</t></is></c>".formatted(cell);
  }

  private static byte[] workbook(List<String> bags, List<String> values) {
    StringBuilder rows = new StringBuilder("<row>" + text("Bag") + text("K") + "</row>");
    for (int i = 0; i < bags.size(); i++) {
      String value = values.get(i);
      boolean number = value.matches("[0-9.]+");
      rows.append("<row>").append(text(bags.get(i)));
      rows.append(number ? "<c><v>%s</v></c>".formatted(value) : text(value.replace("<", "&lt;")));
      rows.append("</row>");
    }
    return new SampleWorkbook().rows(rows.toString()).bytes();
  }

  @Test
  void aWorkbookIsLookedAtAndTakenInByItsMapping() throws Exception {
    Asking asking = new Asking(server);
    String laboratory = laboratory(asking);
    TrialGround ground = new TrialGrounds().of(trial.content());
    List<String> bags =
        ground.bags().entrySet().stream()
            .filter(bag -> bag.getValue().date().toString().equals("2014-04-20"))
            .filter(bag -> bag.getValue().duplicateOf() == null)
            .map(Map.Entry::getKey)
            .sorted()
            .limit(3)
            .toList();
    Map<String, String> form =
        Map.of("kind", "readings", "trial", trial.id(), "laboratory", laboratory);

    byte[] faulty = workbook(bags, List.of("151", "high", "1e300"));
    HttpResponse<String> looked = asking.upload("/import", form, "march.xlsx", faulty);
    assertThat(looked.statusCode()).as(looked.body()).isEqualTo(303);
    assertThat(asking.get(Asking.location(looked).getPath()).body())
        .contains("high", "is no number", "beyond what can be measured")
        .doesNotContain("name=\"seen\"");
    assertThatList(readings()).isEmpty();

    byte[] right = workbook(bags, List.of("151", "<5", "148.5"));
    HttpResponse<String> sent = asking.upload("/import", form, "march.xlsx", right);
    String address = Asking.location(sent).getPath();
    String page = asking.get(address).body();
    Matcher seen = SEEN.matcher(page);
    assertThat(seen.find()).as(page).isTrue();
    assertThat(page).contains("3 readings");
    assertThat(asking.postForm(address + "/add", Map.of("seen", seen.group(1))).statusCode())
        .isEqualTo(303);
    List<Reading> read = readings();
    assertThatList(read).hasSize(3);
    assertThat(read)
        .allMatch(each -> "ppm".equals(each.unit()) && "Mehlich-3".equals(each.method()));
    assertThat(read.get(0).value()).isEqualTo("151");
    assertThat(read.get(0).plot())
        .isEqualTo(Objects.requireNonNull(ground.bag(bags.get(0))).plot());
    assertThat(read.get(1).value()).isEqualTo("<5");

    HttpResponse<String> again = asking.upload("/import", form, "march.xlsx", right);
    assertThat(asking.get(Asking.location(again).getPath()).body())
        .contains("imported before")
        .doesNotContain("name=\"seen\"");
  }

  @Test
  void aStrayCellIsToldBesideEveryOtherFault() throws Exception {
    Asking asking = new Asking(server);
    Map<String, String> form = Map.of("kind", "readings", "trial", trial.id());
    String plain = "plot,date,outcome,value\n1,2014-04-20,quality,6,5\n1,2014-04-20,colour,6\n";
    assertThat(looked(asking, form, plain))
        .contains("It has 5 cells, but the header names 4 columns.")
        .contains("line 3", "no outcome of the plan")
        .doesNotContain("name=\"seen\"");
    Map<String, String> mapped = new LinkedHashMap<>(form);
    mapped.put("laboratory", laboratory(asking));
    assertThat(looked(asking, mapped, "Bag,K\nA\nNOCODE,151\n"))
        .contains("It has 1 cell, but the header names 2 columns.")
        .contains("line 3", "no code of a bag")
        .doesNotContain("name=\"seen\"");
    assertThatList(readings()).isEmpty();
  }

  private static String looked(Asking asking, Map<String, String> form, String csv)
      throws Exception {
    byte[] bytes = csv.getBytes(StandardCharsets.UTF_8);
    HttpResponse<String> sent = asking.upload("/import", form, "march.csv", bytes);
    assertThat(sent.statusCode()).as(sent.body()).isEqualTo(303);
    return asking.get(Asking.location(sent).getPath()).body();
  }

  private List<Reading> readings() {
    return book.read(reading -> reading.ofTrial(Kind.TRIAL_READINGS, trial.id())).stream()
        .flatMap(sheet -> sheet.content().readings().stream())
        .toList();
  }
}
