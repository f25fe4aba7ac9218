package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import leafturn.quantity.Units;
import leafturn.records.SourceText;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.BedSheet;
import leafturn.records.sheet.Changed;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.web.sheet.NoteWords;
import org.junit.jupiter.api.Test;

/** The site as somebody reads it who has chosen US units. */
class UsReaderTest extends DemoSite {
  private static final String LAWN = "heron-bank-play";
  private static final String HEAP =
      "'name': 'By the shed', 'heapKind': 'hot', 'volumeLitres': 900,"
          + " 'heat': [{'day': '2015-05-20', 'temperatureC': 58}]}";
  private static final String BED =
      "'name': 'Border', 'areaM2': 20, 'mulchDepthMm': 50, 'mostNKgPerHa': 100}";
  private static final String INTAKE =
      "'day': '2015-05-20', 'accessWidthMm': 900, 'mowing': {'deckHeightsMm': [40, 76]}}";
  private static final String VISIT =
      "'heightsMm': [90, 95, 99], 'thatchPlugsMm': [12, 15],"
          + " 'compaction': {'method': 'penetrometer', 'resistanceKPa': 1500}}";

  /** A metric unit, with what stands before it in its line. */
  private static final Pattern METRIC =
      Pattern.compile(
          ".{0,30}(?<![\\w/²-])(?:g/m²|g/L|kg/ha|mm|cm|m²|°C|kg|kPa|km/h|m/s|litres?)(?![\\w/²³])");

  private static final double KG_PER_HA_OF_2_LB_PER_1000_FT2 = 97.64855;

  @Override
  void prepare() {
    inUsUnits();
  }

  @Test
  void theNitrogenABedMayTakeIsTypedAsPoundsAndKeptAsKilograms() throws Exception {
    String blank = newSheet(Kind.BED, "property", propertyId());
    assertThat(visitor.read(blank)).contains("lb/1000\u00a0ft²").doesNotContain("kg/ha");
    HttpResponse<String> saved =
        visitor.send(blank, "/sheets/new", bed(Map.of("mostNKgPerHa", "2")));
    assertThat(saved.statusCode()).isEqualTo(303);
    Sheet<BedSheet> bed =
        book.read(reading -> reading.all(Kind.BED)).stream()
            .filter(sheet -> sheet.content().name().equals("Long border"))
            .findFirst()
            .orElseThrow();
    assertThat(bed.content().mostNKgPerHa())
        .isCloseTo(KG_PER_HA_OF_2_LB_PER_1000_FT2, within(1e-4));
    assertThat(visitor.read("/sheets/" + bed.id())).contains("2\u202flb/1000\u00a0ft²");
  }

  @Test
  void aFaultTellsItsLimitsInTheUnitsOfTheForm() throws Exception {
    String blank = newSheet(Kind.BED, "property", propertyId());
    HttpResponse<String> refused =
        visitor.send(blank, "/sheets/new", bed(Map.of("mostNKgPerHa", "30")));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains(
            "30 is out of range; give a number from 0 to 20.48, lb/1000\u00a0ft².", "value=\"30\"")
        .doesNotContain("kg/ha");
  }

  @Test
  void aSoilTestBeginsWithTheUsualDepthInInchesAndAVisitAsksForPsi() throws Exception {
    String lawn = lawnId();
    assertThat(visitor.read(newSheet(Kind.SOIL_TEST, "lawn", lawn)))
        .contains("value=\"4\"")
        .doesNotContain("3.937");
    assertThat(visitor.read(newSheet(Kind.THATCH, "lawn", lawn)))
        .contains("between them: 0.5 0.6 0.4.");
    assertThat(visitor.read("/weather/new")).contains("value=\"6.5\"").doesNotContain("6.562");
    assertThat(visitor.read(newSheet(Kind.VISIT, "lawn", lawn)))
        .contains("in psi</span>")
        .doesNotContain("kPa");
  }

  @Test
  void sourcesTellEachValueInTheReadersUnitBesideTheOneThatIsKept() throws Exception {
    assertThat(visitor.read("/sources"))
        .contains("20\u202f°C", "68\u202f°F (64.4 to 71.6)")
        .contains("5.5\u202f°C difference", "9.9\u202f°F difference (9 to 12.6)")
        .contains("19\u202fg DM/m²/d", "3.89\u202flb DM/1000\u00a0ft²/d")
        .contains("15\u202fcm", "5.91\u202fin")
        .contains("0.6\u202fg/m²/mm", "3.12\u202flb/1000\u00a0ft²/in")
        .contains("120\u202fg DM/m²/mm", "624\u202flb DM/1000\u00a0ft²/in")
        .contains("392\u00a0kg N/ha (8.03\u202flb N/1000\u00a0ft²)", "313\u00a0mm (12.3\u202fin)");
  }

  @Test
  void everyThresholdOfARuleIsReadAndSetInTheReadersUnit() throws Exception {
    assertThat(visitor.read("/rules"))
        .contains(
            "2-4\u00a0°C (4-7\u00a0°F) colder", "lb/1000\u00a0ft²/d", "lb/yd³", "0.01\u202fin")
        .doesNotContain("g/m²", "g/L", "0.00984", "0.0787");
    String rule = "/rules/dry-g-per-litre";
    assertThat(visitor.read(rule)).contains("in lb/yd³");
    Map<String, String> set =
        Map.of("_version", "0", "rule", "dry-g-per-litre", "threshold", "100", "reason", "Weighed");
    Map<String, String> saved = new HashMap<>(set);
    saved.put("step", "save");
    assertThat(visitor.send(rule, saved).statusCode()).isEqualTo(303);
    assertThat(book.read(reading -> reading.all(Kind.RULE)).get(0).content().threshold())
        .isCloseTo(59.3276, within(1e-4));
    assertThat(visitor.read("/rules")).contains("100\u202flb/yd³");
  }

  @Test
  void clippingsAreLeftOrBaggedOnEveryPageOfALawn() throws Exception {
    for (String page : List.of("", "/log", "/advice", "/season")) {
      assertThat(visitor.read("/lawns/" + LAWN + page).replaceAll("(?s)<[^>]*>", "\n"))
          .as(page)
          .doesNotContainPattern("(?i)\\b(returned|collected|returning|collecting)\\b");
    }
    assertThat(visitor.read("/lawns/" + LAWN + "/log"))
        .contains("Mown, clippings left", "Mown, bagged", "Mown, part of the clippings left");
    assertThat(visitor.read("/lawns/" + LAWN))
        .contains("Last entry</dt><dd>Mown on", "% of the clippings left")
        .contains("Height of the grass in inches from the soil up")
        .doesNotContain(" in in ");
  }

  @Test
  void notesNameTheFieldsOfTheFormsInTheReadersUnits() throws Exception {
    NoteWords us = new NoteWords(Units.US);
    assertThat(us.of("Not given in mowing and assumed: heightMm 76 mm, from day 60."))
        .isEqualTo("Not given in mowing and assumed: cut height 3.0\u202fin, from 1\u00a0March.");
    assertThat(us.of("Not given in the lawn and assumed: spinUpYears 4."))
        .isEqualTo("Not given in the lawn and assumed: 4 years run beforehand.");
    assertThat(us.of("Not given in soil and assumed: fieldCapacity 0.36 m3/m3 (clay)."))
        .isEqualTo("Not given in soil and assumed: water held after draining 0.36 m³/m³ (clay).");
    assertThat(new NoteWords(Units.METRIC).of("assumed: testDepthCm 10 cm, shadeFraction 0."))
        .isEqualTo("assumed: depth of the test 10\u202fcm, share of the light taken by shade 0.");
    assertThat(visitor.read("/lawns/" + LAWN)).doesNotContain("fieldCapacity", "shadeFraction");
  }

  @Test
  void whatASheetSaysAndHasSaidIsInTheReadersUnits() throws Exception {
    add(Kind.RULE, "{'rule': 'dry-g-per-litre', 'threshold': 50, 'reason': 'Weighed'}");
    String station = all(Kind.STATION).get(0);
    add(
        Kind.FORECAST,
        "{'station': '%s', 'issued': '2015-05-28', 'origin': 'Ours', 'first': '2015-05-29', 'days': [{'minimumC': 9, 'maximumC': 21, 'rainMm': 4, 'windMPerS': 2}]}"
            .formatted(station));
    String place = "{'property': '" + propertyId() + "', ";
    add(Kind.HEAP, place + HEAP);
    add(Kind.BED, place + BED);
    add(Kind.INTAKE, place + INTAKE);
    String lawn = "{'lawn': '" + lawnId() + "', 'day': '2015-05-20', ";
    add(Kind.VISIT, lawn + VISIT);
    add(Kind.THATCH, lawn + "'plugsMm': [12, 15], 'method': 'pressed'}");
    add(
        Kind.SOIL_TEST,
        lawn
            + "'laboratory': 'County', 'depthCm': 10, 'determinations': [{'analyte': 'phosphorus', 'value': 20, 'unit': 'ppm'}]}");
    for (String id : sheetsWithPages()) {
      for (String page : List.of("", "/correct", "/withdraw")) {
        assertThat(metricOn("/sheets/" + id + page)).as(id + page).isEmpty();
      }
    }
  }

  /** Ids of one sheet of every kind that has a page here and says more than words. */
  private List<String> sheetsWithPages() {
    List<Kind<?>> kinds =
        Kind.all().stream()
            .filter(kind -> !SheetDesk.OWN_PAGES.contains(kind) && kind != Kind.PHOTOGRAPH)
            .toList();
    List<String> ids = kinds.stream().flatMap(kind -> all(kind).stream().limit(1)).toList();
    assertThat(ids).hasSize(kinds.size());
    return ids;
  }

  private <C extends Content> List<String> all(Kind<C> kind) {
    return book.read(reading -> reading.all(kind)).stream().map(Sheet::id).toList();
  }

  @Test
  void changesAndConflictsOfAnEntryAreToldInTheReadersUnits() throws Exception {
    String lawn = lawnId();
    String fed =
        "{'lawn': '"
            + lawn
            + "', 'day': '2015-05-20', 'what': 'fed', 'fastNGPerM2': %s, 'waterInMm': 8}";
    String id = add(Kind.LOG, fed.formatted(4));
    book.write(
        "Bo", writing -> writing.revise(Kind.LOG, id, 1, Kind.LOG.read(json(fed.formatted(5)))));
    String page = "/sheets/" + id;
    assertThat(visitor.read(page))
        .contains("0.8193\u202flb/1000\u00a0ft²", "1.024\u202flb/1000\u00a0ft²", "0.315\u202fin");
    assertThat(metricOn(page)).isEmpty();

    Map<String, String> mine =
        Map.of("version", "1", "day", "2015-05-20", "fastNGPerM2", "1", "waterInMm", "0.315");
    HttpResponse<String> conflict = visitor.send(page + "/correct", page, mine);
    assertThat(conflict.statusCode()).isEqualTo(409);
    assertThat(conflict.body())
        .contains("1.024\u202flb/1000\u00a0ft²", "1\u202flb/1000\u00a0ft²", "value=\"1\"");
    assertThat(metric(conflict.body())).isEmpty();
  }

  @Test
  void aFaultOfTwoHeightsTellsBothInInches() throws Exception {
    String page = "/lawns/" + LAWN + "/log";
    Map<String, String> mown = new HashMap<>();
    mown.put("id", UUID.randomUUID().toString());
    mown.put("as", "returned");
    mown.put("day", "2015-05-20");
    mown.put("heightBeforeMm", "3");
    mown.put("heightAfterMm", "4");
    HttpResponse<String> refused = visitor.send(page, mown);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("4 in is above the height before, 3 in");
  }

  @Test
  void noPageOfTheRoundTellsAMetricFigure() throws Exception {
    for (String page :
        List.of(
            "/",
            "/lawns",
            "/log",
            "/weather",
            "/lawns/" + LAWN,
            "/lawns/" + LAWN + "/advice",
            "/lawns/" + LAWN + "/log",
            "/lawns/" + LAWN + "/season",
            "/properties/heron-bank",
            "/properties/new",
            "/import",
            "/book",
            "/trials")) {
      assertThat(metricOn(page)).as(page).isEmpty();
    }
    assertThat(metricOn("/weather/" + all(Kind.STATION).get(0))).isEmpty();
  }

  private <C extends Content> String add(Kind<C> kind, String document) {
    return book.write("test", writing -> Changed.added(writing, kind, json(document).text())).id();
  }

  private static SourceText json(String text) {
    return new SourceText("test", text.replace('\'', '"'));
  }

  private List<String> metricOn(String page) throws Exception {
    return metric(visitor.read(page));
  }

  /** What a reader of the page finds in metric units; a laboratory may report in any. */
  private static List<String> metric(String html) {
    String words = html.replaceAll("(?s)<(script|title|option)\\b.*?</\\1>|<[^>]*>", "\n");
    return METRIC.matcher(words).results().map(MatchResult::group).toList();
  }

  private Map<String, String> bed(Map<String, String> more) {
    Map<String, String> fields = new HashMap<>(more);
    fields.put("kind", "bed");
    fields.put("property", propertyId());
    fields.put("name", "Long border");
    return fields;
  }

  private String lawnId() {
    return book.read(reading -> reading.at(Kind.LAWN, LAWN)).orElseThrow().id();
  }

  private String propertyId() {
    return book.read(reading -> reading.all(Kind.PROPERTY)).get(0).id();
  }

  private static String newSheet(Kind<?> kind, String place, String id) {
    return "/sheets/new?kind=" + kind.name() + "&" + place + "=" + id;
  }
}
