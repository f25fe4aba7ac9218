package leafturn.web.sheet;

import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.Measure;
import leafturn.records.sheet.Aim;
import leafturn.records.sheet.DeckType;
import leafturn.records.sheet.IntakeSheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.ProductKind;
import leafturn.records.sheet.Watering;
import leafturn.reports.DayWords;
import leafturn.web.form.Field;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;
import leafturn.web.form.FormShape.Group;

/** What an adviser asks before the first season, as it is entered. */
final class IntakeForm extends SheetForm<IntakeSheet> {
  private static final int PRODUCTS = 3;

  IntakeForm() {
    super(Kind.INTAKE, "intake sheet");
  }

  @Override
  public FormShape shape(Setting setting, String document) {
    List<Group> groups = new ArrayList<>();
    groups.add(use());
    groups.add(aims());
    groups.add(
        new Group(
            "Products used before",
            "Weedkillers above all: some residues outlast composting. A row left empty is none.",
            List.of()));
    groups.addAll(Rows.of(document, "productsUsed", PRODUCTS, 1, IntakeForm::product));
    groups.add(place());
    groups.add(mowing());
    groups.add(wateringLimits());
    return new FormShape(groups);
  }

  @Override
  public Form begun(Setting setting) {
    return super.begun(setting).with("day", setting.today().toString());
  }

  private static Group use() {
    return new Group(
        "",
        "",
        List.of(
            Field.date("day", "Day of the talk").needed(),
            Field.longText("usedBy", "Who uses the lawns"),
            yesOrNo("children", "Do children play there?"),
            yesOrNo("dogs", "Are dogs let out there?")
                .hint("Fouled clippings do not go on beds with food."),
            Field.oneOf("watering", "How the lawns are watered", Words.of(Watering.class))));
  }

  private static Field yesOrNo(String path, String label) {
    return Field.oneOf(path, label, Words.YES_OR_NO).hint("Left empty: nobody asked.");
  }

  private static Group aims() {
    return new Group(
        "What its people want",
        "",
        List.of(
            Field.someOf("aims", "Aims", Words.of(Aim.class)),
            Field.longText("aimsInWords", "In their words")));
  }

  private static Group product(int number) {
    String at = "productsUsed[" + number + "].";
    return Group.row(
        "Product " + (number + 1),
        Field.text(at + "product", "Name"),
        Field.oneOf(at + "productKind", "What it is", Words.of(ProductKind.class)),
        Field.date(at + "lastUsed", "Last used"),
        Field.text(at + "note", "Note"));
  }

  private static Group place() {
    return new Group(
        "The place",
        "",
        List.of(
            Field.longText("shade", "Where shade lies, and when"),
            Field.longText("wetCorners", "Where water stands"),
            Field.number("accessWidthMm", "Narrowest way for the mower", Measure.HEIGHT)));
  }

  private static Group mowing() {
    return new Group(
        "The mowing until now",
        "",
        List.of(
            Field.text("mowing.mownBy", "Mown by"),
            Field.someOf("mowing.mowingDays", "Days on which they can mow", ProgrammeForm.days())
                .hint("None: any day. A lawn’s programme may have days of its own."),
            Field.oneOf("mowing.deckType", "Deck", Words.of(DeckType.class)),
            Field.numbers(
                    "mowing.deckHeightsMm", "Measured heights of its settings", Measure.HEIGHT)
                .hint("With gaps between them, on a hard floor from blade to ground, engine off."),
            Field.date("mowing.lastSharpened", "Blades last sharpened")));
  }

  private static Group wateringLimits() {
    return new Group(
        "When watering is allowed",
        "By local rules, which stand above every advice. Left empty: no limits known.",
        List.of(
            Field.flag("wateringLimits.banned", "Not at all for now"),
            Field.someOf("wateringLimits.days", "Only on", ProgrammeForm.days())
                .hint("None: any day."),
            Field.time("wateringLimits.from", "From"),
            Field.time("wateringLimits.to", "To").hint("Past midnight where it is the earlier."),
            note()));
  }

  @Override
  public String title(IntakeSheet content, Setting setting) {
    return "Intake of " + DayWords.dayAndYear(content.day());
  }
}
