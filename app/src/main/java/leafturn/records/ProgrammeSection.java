package leafturn.records;

import java.time.Month;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import leafturn.advice.season.ProgrammeOutcome;
import leafturn.model.lawn.CalendarDay;
import leafturn.model.lawn.CutHeights;
import leafturn.model.lawn.Programme;
import leafturn.model.lawn.ReturnPractice;
import org.jspecify.annotations.Nullable;

/** Mowing, feeding and irrigation of a lawn description, with defaults for what it leaves out. */
final class ProgrammeSection {
  private static final int ONE_THIRD_RULE = 0;

  private final ProgrammeFields given;
  private final double usualHeightMm;
  private final UsualSeason usual;
  private final List<String> notes;

  /**
   * @param southern true for a site south of the equator, where seasons lie half a year apart
   */
  ProgrammeSection(JsonObject root, double usualHeightMm, boolean southern, List<String> notes) {
    this.usual = UsualSeason.of(southern);
    this.given = ProgrammeFields.read(root);
    this.usualHeightMm = usualHeightMm;
    this.notes = notes;
  }

  /** The programme, or null when a feeding has no day, which was then reported. */
  @Nullable Programme read() {
    Programme.Mowing mowing = mowing();
    List<Programme.Feeding> feedings = new ArrayList<>();
    for (ProgrammeFields.Feeding feeding : given.feeding()) {
      if (feeding.day() != null) {
        feedings.add(feeding(feeding));
      }
    }
    double irrigation = irrigationShareOfDemand();
    boolean complete = feedings.size() == given.feeding().size();
    return complete ? new Programme(mowing, feedings, irrigation) : null;
  }

  /** What is worth saying of how often a programme mows. */
  private void checkOften(Programme.Mowing mowing) {
    int most = MowingsAYear.most(mowing);
    if (most < ProgrammeOutcome.FEWEST_MOWINGS) {
      notes.add(MowingsAYear.words(most));
    }
  }

  private Programme.Mowing mowing() {
    ProgrammeFields.Mowing mowing = given.mowing();
    Defaults defaults = new Defaults("mowing");
    double height = defaults.number(mowing.heightMm(), usualHeightMm, "heightMm", "mm");
    int everyDays =
        defaults.value(
            everyDays(mowing.trigger()), ONE_THIRD_RULE, "trigger by the one-third rule");
    CalendarDay from =
        defaults.value(mowing.from(), usual.from(), "from day " + usual.from().dayOfYear());
    CalendarDay to = defaults.value(mowing.to(), usual.to(), "to day " + usual.to().dayOfYear());
    ReturnPractice clippings = clippings(mowing.clippings(), defaults);
    notes.addAll(defaults.notes());
    Programme.Mowing read =
        new Programme.Mowing(
            new CutHeights(height, heights(mowing)), everyDays, from, to, clippings);
    checkOften(read);
    return read;
  }

  static Map<Month, Double> heights(ProgrammeFields.Mowing mowing) {
    Map<Month, Double> heights = new EnumMap<>(Month.class);
    for (Month month : Month.values()) {
      Double height = mowing.heightMmByMonth().get(Choice.word(month));
      if (height != null) {
        heights.put(month, height);
      }
    }
    return heights;
  }

  private static ReturnPractice clippings(ProgrammeFields.Clippings clippings, Defaults defaults) {
    if (Boolean.TRUE.equals(clippings.byRules())) {
      return ReturnPractice.byTheRules();
    }
    return ReturnPractice.always(
        defaults.number(clippings.returnedShare(), 1, "clippings.returnedShare", ""));
  }

  /** Days between cuts, 0 for the one-third rule, or null when it is not given. */
  static @Nullable Integer everyDays(ProgrammeFields.@Nullable Trigger trigger) {
    if (trigger == null) {
      return null;
    }
    return trigger.oneThird() == null ? trigger.everyDays() : Integer.valueOf(ONE_THIRD_RULE);
  }

  /** Nothing of an element is what most products give, so a missing amount is 0 without a note. */
  static Programme.Feeding feeding(ProgrammeFields.Feeding feeding) {
    CalendarDay day = Objects.requireNonNull(feeding.day(), "a feeding needs its day");
    return new Programme.Feeding(
        day,
        orNone(feeding.fastNGPerM2()),
        orNone(feeding.slowNGPerM2()),
        orNone(feeding.pGPerM2()),
        orNone(feeding.kGPerM2()));
  }

  private static double orNone(@Nullable Double amount) {
    return amount == null ? 0 : amount;
  }

  private double irrigationShareOfDemand() {
    Defaults defaults = new Defaults("irrigation");
    double share = defaults.number(given.irrigation().shareOfDemand(), 0, "shareOfDemand", "");
    notes.addAll(defaults.notes());
    return share;
  }
}
