package leafturn.web.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leafturn.model.grass.Species;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.SoilTextures;
import leafturn.records.shape.Outline;
import leafturn.records.sheet.DeckType;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.reports.UnitWords;
import leafturn.web.form.Field;
import leafturn.web.form.Field.Choice;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;
import leafturn.web.form.FormShape.Group;

/** A lawn as it is entered. */
public class LawnForm extends SheetForm<LawnSheet> {
  private static final int FURTHER = 3;

  LawnForm() {
    super(Kind.LAWN, "lawn");
  }

  @Override
  public FormShape shape(Setting setting, String document) {
    List<Group> groups = new ArrayList<>(List.of(lawn()));
    List<Group> mixture = new ArrayList<>();
    mixture.add(
        new Group(
            "Also sown",
            "The other grasses of a mixture with their shares; the grass above has the rest of"
                + " 100 %. The model reckons a mixture as its largest share; the others are kept for"
                + " people.",
            List.of()));
    mixture.addAll(Rows.of(document, "mixture", FURTHER, 0, LawnForm::alsoSown));
    boolean single = Rows.parsed(document).path("mixture").isEmpty();
    mixture.forEach(part -> groups.add(single ? part.folded("Grasses of a mixture") : part));
    groups.addAll(List.of(ground(), soil(), mower(setting.units())));
    return new FormShape(groups);
  }

  private static Group alsoSown(int number) {
    String at = "mixture[" + number + "].";
    return Group.row(
        "Also sown " + (number + 1),
        Field.oneOf(at + "grass", "Grass", grasses()),
        Field.number(at + "percent", "Share", "%"));
  }

  @Override
  String row(Map<String, String> fields, Map<String, String> labels) {
    return fields.getOrDefault("grass", "?") + " " + fields.getOrDefault("percent", "?");
  }

  @Override
  public Form begun(Setting setting) {
    return super.begun(setting)
        .with("name", "Lawn")
        .with("grass", Species.TALL_FESCUE.commonName())
        .with("soil.texture", "loam");
  }

  /** The grasses the model knows, with a word on those it was not run against studies for. */
  public static List<Choice> grasses() {
    return Arrays.stream(Species.values())
        .map(
            grass ->
                new Choice(
                    grass.commonName(),
                    grass.runAgainstStudies()
                        ? grass.commonName()
                        : grass.commonName() + " (from literature ranges only)"))
        .toList();
  }

  private static Group lawn() {
    return new Group(
        "",
        "",
        List.of(
            Field.text("name", "Name").needed(),
            Field.oneOf("grass", "Grass", grasses())
                .hint("Of a mixture, the grass there is most of.")
                .needed(),
            Field.oneOf("annualBluegrass", "Annual bluegrass", annualBluegrass())
                .hint(
                    "Left empty: nobody looked. Its seed heads change what becomes of clippings."),
            Field.text("habit", "How it is kept")
                .hint("In a sentence, for people; the programme is what the model goes by."),
            Field.text("address", "Short name in addresses")
                .hint("Left empty: made from the names of property and lawn."),
            note()));
  }

  private static List<Choice> annualBluegrass() {
    return List.of(
        new Choice("none", "None there"),
        new Choice("there", "There, and nobody minds"),
        new Choice("unwanted", "There, and unwanted"));
  }

  private static Group ground() {
    return new Group(
        "Its ground",
        "",
        List.of(
            Field.outline("outline", "Outline")
                .hint("Its area counts where no area is typed below."),
            Field.number("areaM2", "Area, as measured", Measure.AREA)
                .hint("Left empty: that of the outline. Without either no bags and minutes."),
            Field.number("slopePercent", "Fall of the ground", "%")
                .hint("Left empty: not told. 10 % falls by 1 in every 10."),
            Field.number("shadeFraction", "Share of the light taken by shade", "")
                .hint("From 0 to 0.9; half shade is about 0.5. Left empty: none, full sun.")));
  }

  private static Group soil() {
    List<Choice> textures = SoilTextures.names().stream().map(Choice::of).toList();
    return new Group(
        "Its soil",
        "The model starts from these figures. Organic matter, phosphorus and potassium left empty:"
            + " those of the lawn's soil test, where one is kept. All else left empty: the value"
            + " of the texture, or the model's own; the lawn's page says which.",
        List.of(
            Field.oneOf("soil.texture", "Texture", textures)
                .hint("Sand falls apart in the hand, clay rolls into a ribbon. Left empty: loam."),
            Field.number("soil.organicMatterPercent", "Organic matter", "% of the soil's mass"),
            Field.number("soil.phosphorusPpm", "Phosphorus", "mg/kg"),
            Field.number("soil.potassiumPpm", "Potassium", "mg/kg"),
            Field.text("soil.extractant", "Extracted with")
                .hint("As the laboratory names it; figures of different ones do not compare."),
            Field.number("soil.testDepthCm", "Depth of the test", Measure.DEPTH),
            Field.number("soil.bulkDensityGPerCm3", "Bulk density", "g/cm³"),
            Field.number("soil.fieldCapacity", "Water held after draining", "m³/m³")
                .hint("Field capacity."),
            Field.number("soil.wiltingPoint", "Water that roots cannot take", "m³/m³")
                .hint("Wilting point."),
            Field.number("soil.saturation", "Water when every pore is full", "m³/m³")
                .hint("Saturation."),
            Field.number("soil.curveNumber", "Curve number for runoff", "")
                .hint("From 30, all soaks in, to 100, all runs off.")));
  }

  private static Group mower(Units units) {
    return new Group(
        "Its mower",
        "",
        List.of(
            Field.number("mower.deckWidthMm", "Cutting width", Measure.HEIGHT)
                .hint("With the speed, for minutes. Left empty: no minutes."),
            Field.number("mower.bagLitres", "Bag", Measure.VOLUME)
                .hint("For counting bags. Left empty: no bags."),
            Field.number("mower.speedKmPerH", "Mowing speed", Measure.GROUND_SPEED)
                .hint(
                    "%s is a walking pace. Left empty: no minutes."
                        .formatted(units == Units.US ? "2.5 mi/h" : "4 km/h")),
            Field.flag("mower.doubleCut", "Every mowing goes over the lawn twice"),
            Field.oneOf("mower.deckType", "Deck", Words.of(DeckType.class)),
            Field.date("mower.lastSharpened", "Blades last sharpened")));
  }

  @Override
  public String title(LawnSheet content, Setting setting) {
    return content.name();
  }

  @Override
  public List<Line> findings(LawnSheet content, Setting setting) {
    List<Line> lines = new ArrayList<>();
    Outline outline = content.outline();
    if (outline != null) {
      lines.add(new Line("Area of the outline", setting.words().area(outline.areaM2())));
    }
    twoAreas(content, setting.words()).ifPresent(told -> lines.add(new Line("Two areas", told)));
    return lines;
  }

  /** That a lawn has two areas that differ, and which one counts; empty where it has not. */
  public static Optional<String> twoAreas(LawnSheet lawn, UnitWords units) {
    Outline outline = lawn.outline();
    return outline == null || lawn.areaM2() == null || !lawn.hasTwoAreas()
        ? Optional.empty()
        : Optional.of(
            ("The outline has %s, the area as measured is %s: bags and minutes are reckoned with"
                    + " %2$s. Correct one of the two on the lawn’s sheet.")
                .formatted(units.area(outline.areaM2()), units.area(lawn.areaM2())));
  }
}
