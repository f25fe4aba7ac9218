package leafturn.records.sheet;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import leafturn.records.JsonObject;
import leafturn.records.ProgrammeFields;
import org.jspecify.annotations.Nullable;

/**
 * What is done to a lawn year after year, from a day on. The fields that a lawn description has too
 * are named and checked as there.
 *
 * @param lawn id of the lawn
 * @param name what its people call it, or null
 * @param from first day on which it holds
 * @param mowing when and how it is mown
 * @param feeding fertiliser, every year on the same days
 * @param irrigation what is given back of the water demand
 * @param mownBy name of the person who mows, or null
 * @param mowingDays days of the week on which that person can mow; empty for any
 * @param deckHeightsMm cut heights the deck can be set to, mm, 3 to 200; empty for any
 * @param note anything to remember; may be null
 */
public record ProgrammeSheet(
    String lawn,
    @Nullable String name,
    LocalDate from,
    ProgrammeFields.Mowing mowing,
    List<ProgrammeFields.Feeding> feeding,
    ProgrammeFields.Irrigation irrigation,
    @Nullable String mownBy,
    List<DayOfWeek> mowingDays,
    List<Double> deckHeightsMm,
    @Nullable String note)
    implements Content {
  public ProgrammeSheet {
    feeding = List.copyOf(feeding);
    mowingDays = List.copyOf(mowingDays);
    deckHeightsMm = List.copyOf(deckHeightsMm);
  }

  @Override
  public LocalDate day() {
    return from;
  }

  static ProgrammeSheet read(JsonObject json) {
    String lawn = json.requiredId("lawn", "the lawn it is for");
    String name = json.text("name", Limits.NAME);
    LocalDate from = json.requiredDate("from");
    ProgrammeFields fields = ProgrammeFields.read(json);
    String mownBy = json.text("mownBy", Limits.NAME);
    List<DayOfWeek> days = json.list("mowingDays").choices(DayOfWeek.class);
    List<Double> heights = deckHeights(json);
    String note = json.text("note", Limits.NOTE);
    json.end();
    return new ProgrammeSheet(
        lawn,
        name,
        from,
        fields.mowing(),
        fields.feeding(),
        fields.irrigation(),
        mownBy,
        days,
        heights,
        note);
  }

  /** The cut heights a deck can be set to. */
  static List<Double> deckHeights(JsonObject json) {
    return json.list("deckHeightsMm").numbers(3, 200, "mm");
  }
}
