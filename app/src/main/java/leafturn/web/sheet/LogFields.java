package leafturn.web.sheet;

import java.util.List;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.Choice;
import leafturn.records.sheet.FeedForm;
import leafturn.records.sheet.IngredientGroup;
import leafturn.records.sheet.ProductKind;
import leafturn.records.sheet.Sight;
import leafturn.web.form.Field;

/** Fields of the log that are entered and corrected alike. */
public final class LogFields {
  private LogFields() {}

  /** Bags that a mowing filled. */
  public static Field bags() {
    return Field.number("bags", "Bags filled", "");
  }

  /**
   * Weight of the clippings taken away.
   *
   * @param units of the reader, who may say bagged for collected
   */
  public static Field weight(Units units) {
    return Field.number("weightKg", units.told("Fresh weight collected"), Measure.WEIGHT);
  }

  /** Minutes of a mowing. */
  public static Field minutes() {
    return Field.number("minutes", "Time it took", "minutes");
  }

  /** Whether a mowing was done in two passes. */
  public static Field twoPasses() {
    return Field.flag("twoPasses", "Went over it twice");
  }

  /** Water given. */
  public static List<Field> watered() {
    return List.of(Field.number("waterMm", "Water given", Measure.WATER).needed());
  }

  /** Seed sown. */
  public static List<Field> seeded() {
    return List.of(
        Field.text("seed", "Seed or mix"),
        Field.number("gPerM2", "Seed rate", Measure.MASS_PER_AREA));
  }

  /** A depth worked to, or of a dressing. */
  public static List<Field> depth(String label) {
    return List.of(Field.number("depthMm", label, Measure.HEIGHT));
  }

  /** Lime given. */
  public static List<Field> limed() {
    return List.of(
        Field.number("gPerM2", "Product given", Measure.MASS_PER_AREA).needed(),
        Field.text("product", "Product"));
  }

  /** Fertiliser, and how it came onto the lawn. */
  public static List<Field> fed() {
    return List.of(
        Field.text("product", "Product"),
        amount("fastNGPerM2", "Nitrogen that works at once")
            .hint("At least one of the four amounts is needed."),
        amount("slowNGPerM2", "Nitrogen released slowly"),
        amount("pGPerM2", "Phosphorus, as P"),
        amount("kGPerM2", "Potassium, as K"),
        Field.oneOf("feedForm", "Granular or liquid", Words.of(FeedForm.class)),
        Field.oneOf("wateredIn", "Watered in", Words.YES_OR_NO)
            .hint("Granules still dry on the leaves would be picked up with the clippings."),
        Field.number("waterInMm", "Water to wash it in, by its label", Measure.WATER));
  }

  private static Field amount(String path, String label) {
    return Field.number(path, label, Measure.MASS_PER_AREA);
  }

  /** A product, and what its label says; the label wins over every rule. */
  public static List<Field> treated() {
    return List.of(
        Field.text("product", "Product").needed().hint("Its name on the label."),
        Field.oneOf("productKind", "What it is", Words.of(ProductKind.class)).needed(),
        Field.oneOf("ingredientGroup", "Active ingredient", groups())
            .hint("Left empty: nobody looked. The first outlast composting."),
        Field.number("mowingsBeforeUse", "Mowings before clippings may be used elsewhere", "")
            .hint("As the label says; they go back to this lawn until then."),
        Field.number("clippingsIntervalDays", "Days before they may be used elsewhere", "days")
            .hint("How long the label forbids using clippings as mulch, compost or feed."),
        Field.flag("neverUse", "The label never lets clippings be used elsewhere"),
        Field.flag("labelSaysNone", "The label says nothing of clippings"),
        Field.number("waitBeforeMowingDays", "Wait before mowing, by the label", "days"));
  }

  private static List<Field.Choice> groups() {
    return List.of(
        new Field.Choice(
            Choice.word(IngredientGroup.PYRIDINE_ACID),
            "Clopyralid, aminopyralid, picloram or aminocyclopyrachlor"),
        new Field.Choice(Choice.word(IngredientGroup.OTHER), "Another one"));
  }

  /** What was seen, and what was looked for and not there. */
  public static List<Field> observed() {
    return List.of(
        Field.someOf("things", "What was seen", sights(List.of(Sight.values())))
            .hint("In seed: white heads. Dormant: straw-coloured by drought, its crowns alive."),
        Field.someOf(
                "notThere",
                "Looked for, and not there",
                sights(
                    List.of(
                        Sight.SEED_HEADS,
                        Sight.CLIPPINGS_STILL_SEEN,
                        Sight.CLUMPS,
                        Sight.GROUND_FROST,
                        Sight.WET,
                        Sight.DORMANT,
                        Sight.DISEASE)))
            .hint("“Not there” counts too: it stands above what the season makes likely."),
        Field.number("leafCoverFraction", "Share of the turf under leaves of trees", "")
            .hint("From 0 to 1; half of it is 0.5."),
        Field.number("heightMm", "Grass height", Measure.HEIGHT));
  }

  private static List<Field.Choice> sights(List<Sight> sights) {
    return sights.stream()
        .map(sight -> new Field.Choice(Choice.word(sight), Words.capital(sight.words())))
        .toList();
  }

  /** The time of day of an entry, for what passes within hours. */
  public static Field time() {
    return Field.time("time", "Time of day");
  }
}
