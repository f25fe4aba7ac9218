package leafturn.records.trial;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.shape.Anchor;
import leafturn.records.shape.GridShape;
import leafturn.records.shape.Outline;
import leafturn.records.sheet.BedSheet;
import leafturn.records.sheet.DeckType;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.MowerSheet;
import leafturn.records.sheet.Property;
import org.jspecify.annotations.Nullable;

/** Lawns of the book as a plan has them: outline, the beds that lie in them, mower. */
public final class PlanLawns {
  private static final double USUAL_DECK_MM = 530;

  private PlanLawns() {}

  /** A lawn with its property before it: "Linden House, back lawn". */
  public static String name(BookReading book, Sheet<LawnSheet> lawn) {
    String property =
        book.find(Kind.PROPERTY, lawn.content().property())
            .map(Sheet::content)
            .map(Property::name)
            .orElse("");
    return property.isEmpty() ? lawn.content().name() : property + ", " + lawn.content().name();
  }

  /** The lawns of a plan, for those that have an outline. */
  public static ArrayNode of(BookReading book, List<String> ids) {
    ArrayNode lawns = JsonNodeFactory.instance.arrayNode();
    for (String id : ids) {
      book.find(Kind.LAWN, id).ifPresent(lawn -> add(book, lawns, lawn));
    }
    return lawns;
  }

  /** Names of the lawns that cannot take part because nobody has drawn their outline. */
  public static List<String> withoutOutline(BookReading book, List<String> ids) {
    List<String> names = new ArrayList<>();
    for (String id : ids) {
      book.find(Kind.LAWN, id)
          .filter(lawn -> lawn.content().outline() == null)
          .ifPresent(lawn -> names.add(name(book, lawn)));
    }
    return names;
  }

  private static void add(BookReading book, ArrayNode lawns, Sheet<LawnSheet> lawn) {
    Outline outline = lawn.content().outline();
    if (outline == null) {
      return;
    }
    ObjectNode entry = lawns.addObject().put("name", name(book, lawn));
    entry.set("outline", GridShape.of(outline));
    ArrayNode beds = beds(book, lawn.content().property(), outline.anchor());
    if (!beds.isEmpty()) {
      entry.set("keepOut", beds);
    }
    entry.set("mower", mower(lawn.content().mower()));
  }

  /** Beds whose place on the earth is known, on the grid of the lawn. */
  private static ArrayNode beds(BookReading book, String property, @Nullable Anchor anchor) {
    ArrayNode beds = JsonNodeFactory.instance.arrayNode();
    if (anchor == null) {
      return beds;
    }
    for (Sheet<BedSheet> bed : book.ofProperty(Kind.BED, property)) {
      Outline outline = bed.content().outline();
      ObjectNode shape = outline == null ? null : GridShape.onGridOf(anchor, outline);
      if (shape != null) {
        beds.add(shape);
      }
    }
    return beds;
  }

  /** Where nobody has said, a deck that throws to the right: then drift is reckoned with. */
  private static ObjectNode mower(@Nullable MowerSheet mower) {
    Double deck = mower == null ? null : mower.deckWidthMm();
    DeckType type = mower == null ? null : mower.deckType();
    String discharge =
        type == null || type == DeckType.SIDE_DISCHARGE
            ? "right"
            : type == DeckType.REAR_BAG || type == DeckType.REAR_DISCHARGE ? "rear" : "none";
    ObjectNode told =
        JsonNodeFactory.instance
            .objectNode()
            .put("deckWidthMm", deck == null ? USUAL_DECK_MM : deck)
            .put("discharge", discharge);
    return type == null ? told.put("dischargeAssumed", true) : told;
  }
}
