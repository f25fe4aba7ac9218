package leafturn.web.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Map;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.Dates;
import leafturn.records.Faults;
import leafturn.records.Faults.Fault;
import leafturn.records.InputException;
import leafturn.records.JsonObject;
import leafturn.records.Numbers;
import leafturn.records.shape.Outline;
import leafturn.records.sheet.Kind;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FormTest {
  private static final FormShape PROPERTY =
      FormShape.of(
          Field.text("name", "Name").needed(),
          Field.text("address", "Address").needed(),
          Field.number("latitudeDeg", "Latitude", "°").needed(),
          Field.number("elevationM", "Elevation", Measure.DISTANCE),
          Field.text("timeZone", "Time zone").needed());

  private static final FormShape CUT =
      FormShape.of(
          Field.number("mowing.heightMm", "Cut height", Measure.HEIGHT),
          Field.numbers("heightsMm", "Deck", Measure.HEIGHT),
          Field.flag("mower.doubleCut", "Twice"),
          Field.someOf("aims", "Aims", List.of(Field.Choice.of("tidy"), Field.Choice.of("play"))),
          Field.text("feeding[1].on", "Second feed"));

  @Test
  void everyFaultStandsBesideItsFieldAndNothingTypedIsLost() {
    Form sent =
        Form.sent(
            PROPERTY,
            Units.METRIC,
            Map.of(
                "name", List.of("  Linden House "),
                "latitudeDeg", List.of("north"),
                "elevationM", List.of("9000"),
                "timeZone", List.of("Mars/Base"),
                "evil", List.of("x")));
    Form answer = sent;
    try {
      Kind.PROPERTY.read(sent.document("property"));
    } catch (InputException faults) {
      answer = sent.faulted(faults);
    }
    assertThat(answer.faultyFields())
        .extracting(Field::path)
        .containsExactly("address", "latitudeDeg", "elevationM", "timeZone");
    assertThat(answer.fault(PROPERTY.fields().get(2)))
        .isEqualTo("\"north\" is not a number; give a number from -90 to 90, ° north.");
    assertThat(answer.otherFaults()).isEmpty();
    assertThat(answer.value("name")).isEqualTo("Linden House");
    assertThat(answer.value("latitudeDeg")).isEqualTo("north");
  }

  @Test
  void theNameOfAFileStaysAsItIsAtTheHeadOfAFault() {
    Form form =
        Form.blank(FormShape.of(Field.text("shape", "Shape")), Units.METRIC)
            .faulted("shape", "bow.geojson, line 3: the ring crosses itself.")
            .faulted("shape", "it is missing.");
    assertThat(form.faultsOf(form.shape().fields().get(0)))
        .containsExactly("bow.geojson, line 3: the ring crosses itself.", "It is missing.");
  }

  @Test
  void aCommaThatMayPartThousandsIsNotGuessed() {
    Map<String, List<String>> typed =
        Map.of("mowing.heightMm", List.of("1,240"), "heightsMm", List.of("0,125 76,5"));
    String document = Form.sent(CUT, Units.METRIC, typed).document("programme").text();
    assertThat(document).contains("\"heightMm\":\"1,240\"").contains("[0.125,76.5]");
  }

  @Test
  void aCommaThatMayPartThousandsIsNamedAsTheTrouble() {
    Form sent = Form.sent(PROPERTY, Units.METRIC, Map.of("elevationM", List.of("4,000")));
    InputException faults =
        catchThrowableOfType(
            InputException.class, () -> Kind.PROPERTY.read(sent.document("property")));
    assertThat(sent.faulted(faults).fault(PROPERTY.fields().get(3)))
        .isEqualTo(
            "\"4,000\" has a comma: write 4000 if it parts thousands, 4.000 if it is a decimal"
                + " comma.");
    assertThat(Numbers.commaFault("1,200,000"))
        .isEqualTo("\"1,200,000\" has commas between thousands; write 1200000.");
  }

  @Test
  void aNumberMayBeginWithItsDecimalPoint() {
    Map<String, List<String>> typed =
        Map.of("mowing.heightMm", List.of(".5"), "heightsMm", List.of(".1 ,25; -.5, 3"));
    String document = Form.sent(CUT, Units.METRIC, typed).document("programme").text();
    assertThat(document).contains("\"heightMm\":0.5").contains("[0.1,0.25,-0.5,3]");
  }

  @ParameterizedTest
  @ValueSource(strings = {"3 1/2", "3½", "½", "0.75 in"})
  void aNumberWithAFractionOrAUnitIsToBeADecimal(String typed) {
    Form sent = Form.sent(PROPERTY, Units.US, Map.of("elevationM", List.of(typed)));
    InputException faults =
        catchThrowableOfType(
            InputException.class, () -> Kind.PROPERTY.read(sent.document("property")));
    assertThat(sent.faulted(faults).fault(PROPERTY.fields().get(3)))
        .startsWith("\"" + typed + "\" is not a number; give a number from ")
        .endsWith(", ft; write it as 3.5, a decimal without a unit.");
  }

  @Test
  void aSignOfPerCentIsTakenWhereItCanBeMeant() {
    FormShape shape =
        FormShape.of(
            Field.number("percent", "Share", "%"),
            Field.number("fraction", "Share", Measure.SHARE),
            Field.number("share", "Share returned", ""),
            Field.number("heightMm", "Height", Measure.HEIGHT));
    Map<String, List<String>> typed =
        Map.of(
            "percent", List.of("60%"),
            "fraction", List.of("62,5 %"),
            "share", List.of("60 %"),
            "heightMm", List.of("60%"));
    assertThat(Form.sent(shape, Units.METRIC, typed).document("form").text())
        .isEqualTo("{\"percent\":60,\"fraction\":0.625,\"share\":0.6,\"heightMm\":\"60%\"}");
  }

  @Test
  void aShareOutOfRangeIsToldAsItWasTyped() {
    FormShape shape = FormShape.of(Field.number("share", "Share returned", ""));
    Form sent = Form.sent(shape, Units.METRIC, Map.of("share", List.of("150 %")));
    String sentence = "1.5 is out of range; give a number from 0 to 1.";
    InputException found = InputException.of(List.of(new Fault("share", sentence, sentence)));
    assertThat(sent.faulted(found).fault(shape.fields().get(0)))
        .isEqualTo("\"150 %\" is out of range; give a number from 0 to 1.");
  }

  @Test
  void whoUsesUsUnitsMayTypeTheMonthFirst() {
    FormShape shape = FormShape.of(Field.date("day", "Day"));
    assertThat(day(shape, Units.US, "5/28/2015").value("day")).isEqualTo("2015-05-28");
    assertThat(day(shape, Units.METRIC, "5/28/2015").value("day")).isEqualTo("5/28/2015");
    Form wrong = day(shape, Units.US, "05/32/2026");
    assertThat(wrong.value("day")).isEqualTo("05/32/2026");
    String sentence = Dates.fault("05/32/2026");
    InputException found = InputException.of(List.of(new Fault("day", sentence, sentence)));
    assertThat(wrong.faulted(found).fault(shape.fields().get(0)))
        .isEqualTo("\"05/32/2026\" is not a date; write month, day and year as in 05/28/2015.");
    assertThat(day(shape, Units.METRIC, "05/32/2026").faulted(found).fault(shape.fields().get(0)))
        .endsWith("write year, month and day as in 2015-05-28.");
  }

  private static Form day(FormShape shape, Units units, String typed) {
    return Form.sent(shape, units, Map.of("day", List.of(typed)));
  }

  @Test
  void aFormWritesNumbersListsAndParts() {
    Form form =
        Form.sent(
            CUT,
            Units.METRIC,
            Map.of(
                "mowing.heightMm", List.of("76,5"),
                "heightsMm", List.of("30 40; 50"),
                "mower.doubleCut", List.of("on"),
                "aims", List.of("tidy", "play"),
                "feeding[1].on", List.of("05-10")));
    assertThat(form.document("lawn").text())
        .isEqualTo(
            "{\"mowing\":{\"heightMm\":76.5},\"heightsMm\":[30,40,50],"
                + "\"mower\":{\"doubleCut\":true},\"aims\":[\"tidy\",\"play\"],"
                + "\"feeding\":[{\"on\":\"05-10\"}]}");
  }

  @Test
  void whatAFormDoesNotShowStaysAndWhatIsEmptiedGoes() {
    Form form = Form.sent(CUT, Units.METRIC, Map.of("mowing.heightMm", List.of("50")));
    String before =
        "{\"kept\":1,\"mower\":{\"doubleCut\":true},\"mowing\":{\"heightMm\":40,\"x\":2}}";
    assertThat(form.document("lawn", before).text())
        .isEqualTo("{\"kept\":1,\"mowing\":{\"heightMm\":50,\"x\":2}}");
  }

  @Test
  void aNumberNobodyTouchedStaysExactInOtherUnits() {
    String before = "{\"mowing\":{\"heightMm\":76},\"heightsMm\":[30,40.5]}";
    Form shown = Form.of(CUT, Units.US, before);
    assertThat(shown.value("mowing.heightMm")).isEqualTo("2.992");
    assertThat(shown.value("heightsMm")).isEqualTo("1.181 1.594");
    assertThat(shown.document("lawn", before).text()).isEqualTo(before);
    assertThat(shown.with("mowing.heightMm", "3").document("lawn", before).text())
        .isEqualTo("{\"mowing\":{\"heightMm\":76.2},\"heightsMm\":[30,40.5]}");
  }

  @Test
  void anOutlineIsInFeetForReadersOfUsUnitsAndKeptInMetres() {
    FormShape lawn = FormShape.of(Field.outline("outline", "Outline"));
    String kept = "{\"outline\":{\"patches\":[{\"edge\":[[0,0],[12,0],[12,8.5],[0,8.5]]}]}}";
    Form shown = Form.of(lawn, Units.US, kept);
    assertThat(shown.value("outline")).isEqualTo("0 0\n39.37 0\n39.37 27.887\n0 27.887\n");
    assertThat(outline(shown)).isEqualTo(Outline.rectangle(12, 8.5));
    assertThat(outline(shown.with("outline", "100 x 50")))
        .isEqualTo(Outline.rectangle(30.48, 15.24));
  }

  private static @Nullable Outline outline(Form form) {
    return Outline.read(JsonObject.root(form.document("lawn"), new Faults("lawn")), "outline");
  }

  @Test
  void anOutlineIsAListOfCornersInTheFormAndMayBeOneInTheDocument() {
    FormShape lawn = FormShape.of(Field.outline("outline", "Outline"));
    String kept = "{\"outline\":{\"patches\":[{\"edge\":[[0,0],[12,0],[12,8.5],[0,8.5]]}]}}";
    Form form = Form.of(lawn, Units.METRIC, kept);
    assertThat(form.value("outline")).isEqualTo("0 0\n12 0\n12 8.5\n0 8.5\n");
    Faults faults = new Faults("lawn");
    JsonObject document = JsonObject.root(form.document("lawn"), faults);
    assertThat(Outline.read(document, "outline")).isEqualTo(Outline.rectangle(12, 8.5));
    Form spoilt = form.with("outline", "0 0\r\n12 0\r\nnowhere");
    assertThat(Outline.read(JsonObject.root(spoilt.document("lawn"), faults), "outline")).isNull();
    InputException found = catchThrowableOfType(InputException.class, faults::throwIfAny);
    assertThat(spoilt.faulted(found).fault(lawn.fields().get(0)))
        .startsWith("Line 3: \"nowhere\" is no corner");
  }
}
