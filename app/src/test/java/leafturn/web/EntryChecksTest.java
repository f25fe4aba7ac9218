package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Changed;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.Property;
import org.junit.jupiter.api.Test;

/** What cannot be true of a place or a day is refused, or told above the advice. */
class EntryChecksTest extends HeronBankSite {
  private static final String DAY = "2015-05-29";
  private static final String NOT_YET = "Friday 29 May 2015 has not come yet";

  @Test
  void anOutlineFarFromItsPropertyIsRefusedAndToldWhereItLies() throws Exception {
    Sheet<Property> property = property();
    double latitude = property.content().latitudeDeg();
    Map<String, String> bed = new HashMap<>();
    bed.put("kind", "bed");
    bed.put("property", property.id());
    bed.put("id", UUID.randomUUID().toString());
    bed.put("name", "Long border");
    bed.put("outline", "origin %s -73.96\n0 0\n10 0\n10 2\n0 2".formatted(latitude));
    String form = ADD + "?kind=bed&property=" + property.id();
    HttpResponse<String> swapped = visitor.send(form, ADD, bed);
    assertThat(swapped.statusCode()).isEqualTo(422);
    assertThat(swapped.body())
        .contains("id=\"f-outline-fault\"", "lies at latitude -73.96", "km away", "may be swapped");
    bed.put("outline", "origin 120 30\n0 0\n10 0\n10 2\n0 2");
    assertThat(visitor.send(form, ADD, bed).body())
        .contains("lies at latitude 30.00, longitude 120.00", "km away")
        .doesNotContain("swapped");
    bed.put("outline", "origin -73.96 %s\n0 0\n10 0\n10 2\n0 2".formatted(latitude));
    assertThat(visitor.send(form, ADD, bed).statusCode()).isEqualTo(303);
  }

  @Test
  void daysToComeAreRefusedWhereverSomethingDoneOrSeenIsTold() throws Exception {
    refused("visit", "lawn", Map.of("day", DAY, "heightsMm", "80"), "day");
    refused(
        "soil-test",
        "lawn",
        Map.of(
            "day",
            DAY,
            "laboratory",
            "County",
            "depthCm",
            "10",
            "determinations[0].value",
            "6",
            "determinations[0].analyte",
            "pH",
            "determinations[0].unit",
            "pH"),
        "day");
    refused(
        "thatch", "lawn", Map.of("day", DAY, "plugsMm", "10 12 14", "method", "pressed"), "day");
    refused(
        "intake",
        "property",
        Map.of(
            "day",
            "2015-05-20",
            "mowing.lastSharpened",
            DAY,
            "productsUsed[0].product",
            "Feed",
            "productsUsed[0].lastUsed",
            DAY),
        "mowing-lastSharpened",
        "productsUsed-0-lastUsed");
    refused(
        "heap",
        "property",
        Map.of(
            "name", "By the shed",
            "heapKind", "hot",
            "started", DAY,
            "heat[0].day", DAY,
            "heat[0].temperatureC", "60"),
        "started",
        "heat-0-day");
  }

  @Test
  void aDayToComeIsToldAtOnceWithWhateverElseIsWrong() throws Exception {
    String day = "id=\"f-day-fault\"";
    String heights = "id=\"f-heightsMm-fault\"";
    assertThat(send("visit", "lawn", Map.of("day", DAY, "heightsMm", "80 9000")).body())
        .contains(NOT_YET, day, heights);
    String id = UUID.randomUUID().toString();
    Map<String, String> visit = new HashMap<>(Map.of("day", "2015-05-20", "heightsMm", "80"));
    visit.put("id", id);
    assertThat(send("visit", "lawn", visit).statusCode()).isEqualTo(303);
    String page = "/sheets/" + id;
    HttpResponse<String> corrected =
        visitor.send(
            page + "/correct", page, Map.of("version", "1", "day", DAY, "heightsMm", "80 9000"));
    assertThat(corrected.statusCode()).isEqualTo(422);
    assertThat(corrected.body()).contains(NOT_YET, day, heights);
  }

  @Test
  void theHeatOfAHeapWasNotMeasuredBeforeItWasBegun() throws Exception {
    Map<String, String> heap = new HashMap<>();
    heap.put("name", "By the shed");
    heap.put("heapKind", "hot");
    heap.put("started", "2015-05-04");
    heap.put("heat[0].day", "2015-05-01");
    heap.put("heat[0].temperatureC", "60");
    HttpResponse<String> early = send("heap", "property", heap);
    assertThat(early.statusCode()).isEqualTo(422);
    assertThat(early.body())
        .contains(
            "id=\"f-heat-0-day-fault\"",
            "Friday 1 May 2015 lies before the day on which the heap was begun, Monday 4 May 2015");
    heap.put("heat[0].day", "2015-05-04");
    assertThat(send("heap", "property", heap).statusCode()).isEqualTo(303);
  }

  @Test
  void twoPropertiesOfABookAreNotGivenOneName() throws Exception {
    Map<String, String> second = new HashMap<>();
    second.put("property.name", "heron bank");
    second.put("property.latitudeDeg", "95");
    HttpResponse<String> answer =
        visitor.sendWithFile("/properties/new", second, NewPropertyForm.FILE, "", null);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains(
            "id=\"f-property-name-fault\"",
            "id=\"f-property-latitudeDeg-fault\"",
            "has a property of this name already, \"Heron Bank\" with the address heron-bank");
    Sheet<Property> other =
        book.read(reading -> reading.all(Kind.PROPERTY)).stream()
            .filter(sheet -> !sheet.content().address().equals("heron-bank"))
            .findFirst()
            .orElseThrow();
    Map<String, String> renamed = propertyFields(-37.8);
    renamed.put("address", other.content().address());
    HttpResponse<String> refused =
        visitor.send(
            "/properties/" + other.content().address() + "/edit", "/sheets/" + other.id(), renamed);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("id=\"f-name-fault\"", "id=\"f-station-fault\"");
  }

  @Test
  void twoSpacesMakeNoOtherNameOfAProperty() throws Exception {
    Map<String, String> second =
        NewProperty.fields(Map.of("property.name", "HERON \u00a0 bank", "station", "none"));
    HttpResponse<String> answer =
        visitor.sendWithFile("/properties/new", second, NewPropertyForm.FILE, "", null);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("has a property of this name already, \"Heron Bank\"");
    second.put("property.name", "Elm  House");
    assertThat(
            visitor
                .sendWithFile("/properties/new", second, NewPropertyForm.FILE, "", null)
                .statusCode())
        .isEqualTo(303);
    List<Sheet<Property>> all = book.read(reading -> reading.all(Kind.PROPERTY));
    assertThat(all).extracting(sheet -> sheet.content().name()).contains("Elm House");
  }

  @Test
  void aRecordFromTheOtherHemisphereIsRefusedButHoldsUpNoOtherCorrection() throws Exception {
    Map<String, String> fields = propertyFields(-37.8);
    HttpResponse<String> answer = correctProperty(fields);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains("id=\"f-station-fault\"", "in the other hemisphere", "Choose a record from");
    Sheet<Property> before = property();
    book.write("Owner", writing -> Changed.revised(writing, before, "/latitudeDeg = -37.8"));
    String lawn = visitor.read("/lawns/heron-bank-play");
    assertThat(lawn).contains("in the other hemisphere");
    assertThat(visitor.read("/"))
        .containsOnlyOnce("in the other hemisphere")
        .contains("Heron Bank: the record “New York” comes");
    assertThat(lawn.indexOf("in the other hemisphere")).isLessThan(lawn.indexOf("<h1"));
    fields.put("version", "2");
    fields.put("note", "The gate sticks.");
    assertThat(correctProperty(fields).statusCode()).isEqualTo(303);
  }

  @Test
  void aPropertyOfTheSouthIsNotBegunOnTheExampleButWithoutARecord() throws Exception {
    Map<String, String> fields =
        NewProperty.fields(
            Map.of(
                "property.name", "South Farm",
                "property.latitudeDeg", "-37.8",
                "property.timeZone", "Australia/Melbourne",
                "station", "example"));
    HttpResponse<String> answer =
        visitor.sendWithFile("/properties/new", fields, NewPropertyForm.FILE, "", null);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("id=\"f-station-fault\"", "in the other hemisphere");
    fields.put("station", NewPropertyForm.NONE);
    assertThat(
            visitor
                .sendWithFile("/properties/new", fields, NewPropertyForm.FILE, "", null)
                .statusCode())
        .isEqualTo(303);
    assertThat(visitor.read("/lawns/south-farm-lawn")).contains("There is no weather");
  }

  @Test
  void entriesAfterTodayAreToldAboveTheRoundAndTheLawn() throws Exception {
    assertThat(visitor.read("/")).doesNotContain("may be wrong");
    String entry =
        "{\"lawn\": \"%s\", \"day\": \"2015-06-20\", \"what\": \"mown\", \"heightAfterMm\": 50, \"returnedShare\": 1}"
            .formatted(owner("lawn"));
    book.write("Ada", writing -> Changed.added(writing, Kind.LOG, entry));
    for (String path : List.of("/", "/lawns/heron-bank-play")) {
      String page = visitor.read(path);
      assertThat(page)
          .contains("Saturday 20 June 2015", "here it is Thursday 28 May 2015", "may be wrong");
    }
    assertThat(visitor.read("/lawns/heron-bank-orchard")).doesNotContain("may be wrong");
  }

  private void refused(String kind, String owner, Map<String, String> given, String... faulty)
      throws Exception {
    HttpResponse<String> answer = send(kind, owner, given);
    assertThat(answer.statusCode()).as(kind).isEqualTo(422);
    assertThat(answer.body()).as(kind).contains(NOT_YET);
    for (String field : faulty) {
      assertThat(answer.body()).as(kind).contains("id=\"f-" + field + "-fault\"");
    }
  }

  private Map<String, String> propertyFields(double latitudeDeg) {
    Map<String, String> fields = new HashMap<>();
    fields.put("version", "1");
    fields.put("name", "Heron Bank");
    fields.put("address", "heron-bank");
    fields.put("timeZone", "America/New_York");
    fields.put("latitudeDeg", Double.toString(latitudeDeg));
    fields.put("station", String.valueOf(property().content().station()));
    return fields;
  }

  private HttpResponse<String> correctProperty(Map<String, String> fields) throws Exception {
    return visitor.send("/properties/heron-bank/edit", "/sheets/" + property().id(), fields);
  }

  private Sheet<Property> property() {
    return book.read(reading -> reading.at(Kind.PROPERTY, "heron-bank")).orElseThrow();
  }
}
