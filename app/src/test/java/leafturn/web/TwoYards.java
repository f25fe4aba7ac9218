package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leafturn.quantity.Units;
import leafturn.records.book.BookWriting;
import leafturn.records.book.Sheet;
import leafturn.records.people.Person;
import leafturn.records.people.Role;
import leafturn.records.people.Visitor;
import leafturn.records.sheet.Changed;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.TrialPast;
import leafturn.records.sheet.TrialReadingsSheet;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.TrialShelf;

/** A trial of two yards on a site with people, planned by an adviser. */
final class TwoYards implements AutoCloseable {
  final PeopledSite site;
  final Browser adviser;

  TwoYards(Path folder) {
    site = new PeopledSite(folder, Clock.systemUTC());
    site.book.write("Wren", writing -> draw(writing, "linden-house-front"));
    site.book.write("Wren", writing -> draw(writing, "linden-house-back"));
    adviser = site.signedIn(Role.ADVISER);
  }

  @Override
  public void close() {
    site.close();
  }

  /** Gives a lawn an outline, so that it can be laid out. */
  private static Sheet<LawnSheet> draw(BookWriting writing, String address) {
    return Changed.revised(
        writing,
        writing.at(Kind.LAWN, address).orElseThrow(),
        "/outline = \"0 0\\n24 0\\n24 16\\n0 16\"");
  }

  /** A plan as the form sends it. */
  Map<String, String> plan() {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("name", "Two yards");
    fields.put("question", "Does returning keep the turf as good?");
    fields.put("design", "split-yard");
    fields.put("factor", "practice");
    fields.put("arms[0].name", "collected");
    fields.put("arms[0].clippings", "collected");
    fields.put("arms[1].name", "returned");
    fields.put("arms[1].clippings", "returned");
    fields.put("seed", "7");
    fields.put("cores.perPlot", "0");
    fields.put("season.from", "2015-04-01");
    fields.put("season.to", "2015-10-31");
    fields.put("dates", "2015-05-04\n2015-06-01");
    fields.put("outcomes[0].name", "quality");
    fields.put("outcomes[0].kind", "rating");
    fields.put("outcomes[0].unit", "1-9");
    fields.put("outcomes[0].low", "1");
    fields.put("outcomes[0].high", "9");
    fields.put("outcomes[0].scale", "identity");
    fields.put("outcomes[0].summary", "season-mean");
    fields.put("outcomes[0].margin", "0.5");
    fields.put("outcomes[0].primary", "true");
    fields.put("contrasts", "returned − collected");
    fields.put("protocol.ratersBlind", "true");
    fields.put("protocol.feed", "equal");
    return fields;
  }

  /** A rating of one plot on the first planned day, as the form sends it. */
  static Map<String, String> rating(String rater, String value) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("date", "2015-05-04");
    fields.put("outcome", "quality");
    fields.put("rater", rater);
    fields.put("plot-B1-1", value);
    return fields;
  }

  private List<String> lawns() {
    return site.book.read(
        reading ->
            List.of(
                reading.at(Kind.LAWN, "linden-house-front").orElseThrow().id(),
                reading.at(Kind.LAWN, "linden-house-back").orElseThrow().id()));
  }

  /** What of a trial was changed and taken back. */
  TrialPast past(String address) {
    Sheet<TrialSheet> trial = trial(address);
    Person person =
        new Person(Person.LOCAL_OWNER, "Olga", Role.OWNER, Units.METRIC, false, false, 1);
    Visitor owner = new Visitor(person, true, Set.of());
    return site.book.read(reading -> new TrialShelf(reading, owner).past(trial, ZoneOffset.UTC));
  }

  HttpResponse<String> post(Browser browser, String path, Map<String, String> fields) {
    Map<String, String> all = new LinkedHashMap<>(fields);
    all.put("_token", browser.token());
    return browser.post(path, all);
  }

  /** Sends a plan of the two yards. */
  HttpResponse<String> plan(String path, Map<String, String> fields) {
    StringBuilder body = new StringBuilder("_token=" + Browser.encoded(adviser.token()));
    fields.forEach(
        (name, value) ->
            body.append('&')
                .append(Browser.encoded(name))
                .append('=')
                .append(Browser.encoded(value)));
    lawns().forEach(id -> body.append("&inBook=").append(id));
    return adviser.send(
        adviser
            .request(path)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(java.net.http.HttpRequest.BodyPublishers.ofString(body.toString())));
  }

  static String faults(HttpResponse<String> answer) {
    return answer
        .body()
        .replaceAll("(?s).*<div class=\"faults\"", "")
        .replaceAll("(?s)</div>.*", "")
        .replaceAll("<[^>]*>", "");
  }

  /** Plans the trial; its address. */
  String planned() {
    return planned(plan());
  }

  /** Plans a trial as the form sends it; its address. */
  String planned(Map<String, String> fields) {
    HttpResponse<String> answer = plan("/trials/new", fields);
    assertThat(answer.statusCode()).as("%s", faults(answer)).isEqualTo(303);
    return answer.headers().firstValue("Location").orElseThrow();
  }

  Sheet<TrialSheet> trial(String path) {
    String id = path.substring(path.lastIndexOf('/') + 1);
    return site.book.read(reading -> reading.find(Kind.TRIAL, id)).orElseThrow();
  }

  List<Sheet<TrialReadingsSheet>> readings(String trial) {
    return site.book.read(reading -> reading.ofTrial(Kind.TRIAL_READINGS, trial(trial).id()));
  }
}
