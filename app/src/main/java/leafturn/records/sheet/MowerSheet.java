package leafturn.records.sheet;

import java.time.LocalDate;
import leafturn.model.lawn.Lawn;
import leafturn.records.Choice;
import leafturn.records.JsonObject;
import leafturn.records.LawnParts;
import org.jspecify.annotations.Nullable;

/**
 * The mower of a lawn.
 *
 * @param deckWidthMm cutting width, mm, 200 to 4000, or null
 * @param bagLitres volume of the bag, litres, 5 to 5000, or null
 * @param speedKmPerH mowing speed, km/h, 0.5 to 20, or null
 * @param doubleCut true when each mowing goes over the lawn twice
 * @param deckType what the deck does with the clippings, or null
 * @param lastSharpened day its blades were last sharpened, or null
 */
public record MowerSheet(
    @Nullable Double deckWidthMm,
    @Nullable Double bagLitres,
    @Nullable Double speedKmPerH,
    boolean doubleCut,
    @Nullable DeckType deckType,
    @Nullable LocalDate lastSharpened) {

  /** The mower with the figures the model knows and nothing else told. */
  static MowerSheet of(Lawn.Mower mower) {
    return new MowerSheet(
        mower.deckWidthMm(), mower.bagLitres(), mower.speedKmPerH(), mower.doubleCut(), null, null);
  }

  static MowerSheet read(JsonObject section) {
    Lawn.Mower mower = LawnParts.mower(section);
    DeckType deck = Choice.read(section, "deckType", DeckType.class);
    LocalDate sharpened = section.date("lastSharpened");
    section.refuseOthers();
    return new MowerSheet(
        mower.deckWidthMm(),
        mower.bagLitres(),
        mower.speedKmPerH(),
        mower.doubleCut(),
        deck,
        sharpened);
  }

  /** The mower as the model takes it. */
  Lawn.Mower forModel() {
    return new Lawn.Mower(deckWidthMm, bagLitres, speedKmPerH, doubleCut);
  }
}
