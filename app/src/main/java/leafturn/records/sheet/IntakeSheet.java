package leafturn.records.sheet;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import leafturn.records.Choice;
import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * What an adviser asks before the first season: who uses the lawns, what for, and how they are kept
 * so far. Nothing but property and day must be told.
 *
 * @param property id of the property
 * @param day the day of the talk
 * @param usedBy who uses the lawns, in words, or null
 * @param children whether children play there, or null when nobody asked
 * @param dogs whether dogs are let out there, or null when nobody asked
 * @param watering how the lawns are watered, or null
 * @param productsUsed products used before
 * @param aims what the people want
 * @param aimsInWords the same in their words, or null
 * @param shade where shade lies and when, in words, or null
 * @param wetCorners where water stands, in words, or null
 * @param accessWidthMm narrowest way for the mower, mm, 200 to 20,000, or null
 * @param mowing who mows, when and with what
 * @param wateringLimits when the local rules let the lawns be watered, or null when nobody asked
 * @param note anything to remember; may be null
 */
public record IntakeSheet(
    String property,
    LocalDate day,
    @Nullable String usedBy,
    @Nullable Boolean children,
    @Nullable Boolean dogs,
    @Nullable Watering watering,
    List<ProductUsed> productsUsed,
    List<Aim> aims,
    @Nullable String aimsInWords,
    @Nullable String shade,
    @Nullable String wetCorners,
    @Nullable Double accessWidthMm,
    Mowing mowing,
    @Nullable WateringRules wateringLimits,
    @Nullable String note)
    implements Content {
  public IntakeSheet {
    productsUsed = List.copyOf(productsUsed);
    aims = List.copyOf(aims);
  }

  /**
   * @param product its name
   * @param productKind what it is for, or null when nobody knows
   * @param lastUsed day it was last used, or null
   * @param note anything to remember; may be null
   */
  public record ProductUsed(
      String product,
      @Nullable ProductKind productKind,
      @Nullable LocalDate lastUsed,
      @Nullable String note) {

    private static ProductUsed read(JsonObject json) {
      ProductUsed used =
          new ProductUsed(
              json.requiredText("product", Limits.NAME, "its name"),
              Choice.read(json, "productKind", ProductKind.class),
              json.date("lastUsed"),
              json.text("note", Limits.NOTE));
      json.refuseOthers();
      return used;
    }
  }

  /**
   * @param mownBy name of the person who mows, or null
   * @param mowingDays days of the week on which that person can mow; empty for any
   * @param deckType what the deck does with the clippings, or null
   * @param deckHeightsMm measured cut heights of the deck's settings, mm, 3 to 200
   * @param lastSharpened day the blades were last sharpened, or null
   */
  public record Mowing(
      @Nullable String mownBy,
      List<DayOfWeek> mowingDays,
      @Nullable DeckType deckType,
      List<Double> deckHeightsMm,
      @Nullable LocalDate lastSharpened) {
    public Mowing {
      mowingDays = List.copyOf(mowingDays);
      deckHeightsMm = List.copyOf(deckHeightsMm);
    }

    private static Mowing read(JsonObject section) {
      Mowing mowing =
          new Mowing(
              section.text("mownBy", Limits.NAME),
              section.list("mowingDays").choices(DayOfWeek.class),
              Choice.read(section, "deckType", DeckType.class),
              ProgrammeSheet.deckHeights(section),
              section.date("lastSharpened"));
      section.refuseOthers();
      return mowing;
    }
  }

  static IntakeSheet read(JsonObject json) {
    String property = json.requiredId("property", "the property");
    LocalDate day = json.requiredDate("day");
    String usedBy = json.text("usedBy", Limits.NOTE);
    Boolean children = json.flag("children");
    Boolean dogs = json.flag("dogs");
    Watering watering = Choice.read(json, "watering", Watering.class);
    List<ProductUsed> used = json.objects("productsUsed").stream().map(ProductUsed::read).toList();
    List<Aim> aims = json.list("aims").choices(Aim.class);
    String aimsInWords = json.text("aimsInWords", Limits.NOTE);
    String shade = json.text("shade", Limits.NOTE);
    String wetCorners = json.text("wetCorners", Limits.NOTE);
    Double access = json.number("accessWidthMm", 200, 20_000, "mm");
    Mowing mowing = Mowing.read(json.object("mowing"));
    WateringRules limits = Part.read(json, "wateringLimits", WateringRules::read);
    String note = json.text("note", Limits.NOTE);
    json.end();
    return new IntakeSheet(
        property,
        day,
        usedBy,
        children,
        dogs,
        watering,
        used,
        aims,
        aimsInWords,
        shade,
        wetCorners,
        access,
        mowing,
        limits,
        note);
  }
}
