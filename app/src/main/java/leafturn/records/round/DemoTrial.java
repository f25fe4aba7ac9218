package leafturn.records.round;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import leafturn.records.book.BookWriting;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialReadingsSheet;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookPlan;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.design.layout.Randomisation;
import leafturn.trials.design.layout.Unit;
import leafturn.trials.observation.Reading;
import org.jspecify.annotations.Nullable;

/**
 * The trial of the invented round: the example of split yards, moved to the season before the day
 * of the round. Its readings are drawn from a seed and are nobody's.
 */
final class DemoTrial {
  private static final int SEASON = 2014;
  private static final Instant FROZEN = Instant.parse("2014-03-28T09:00:00Z");
  private static final long SEED = 20_140_401;
  private static final String RATER = "Robin (invented)";
  private static final String NOTE =
      "Invented: plan, yards and readings are examples, drawn from a seed. Nothing of it was"
          + " measured.";

  /** Days until a laboratory has answered. */
  private static final int LABORATORY_DAYS = 14;

  private final BookWriting writing;
  private final SplittableRandom random = new SplittableRandom(SEED);
  private final String trial = DemoBook.id("trial");
  private final List<Unit> plots;
  private final double[] yardLevels;

  private DemoTrial(BookWriting writing, TrialPlan plan) {
    this.writing = writing;
    this.plots = Randomisation.of(plan);
    this.yardLevels = random.doubles(plan.lawns().size(), -1, 1).toArray();
  }

  /**
   * Writes the trial into the book of the round.
   *
   * @param example the document of the example
   * @param lawns ids of the lawns of the book that take part
   */
  static void write(BookWriting writing, ObjectNode example, List<String> lawns) {
    ObjectNode plan = inSeason(example);
    TrialSheet planned = TrialSheet.planned(plan, lawns).noted(NOTE);
    TrialSheet frozen =
        planned.frozenAs(
            new TrialSheet.Frozen(FROZEN.toString(), writing.by(), BookPlan.hash(planned), null));
    DemoTrial demo = new DemoTrial(writing, BookPlan.of(planned));
    int version =
        writing.at(FROZEN.minus(2, ChronoUnit.DAYS)).add(Kind.TRIAL, demo.trial, planned).version();
    version =
        writing
            .at(FROZEN)
            .revise(Kind.TRIAL, demo.trial, version, Kind.TRIAL.checked(frozen))
            .version();
    for (JsonNode date : plan.path("dates")) {
      demo.read(LocalDate.parse(date.asText()));
    }
    demo.mishap();
    LocalDate end = LocalDate.of(SEASON, 10, 31);
    demo.evening(end)
        .revise(Kind.TRIAL, demo.trial, version, Kind.TRIAL.checked(frozen.endedOn(end, null)));
  }

  /** Writes in the evening of a day. */
  private BookWriting evening(LocalDate day) {
    return writing.at(day.atTime(22, 0).toInstant(ZoneOffset.UTC));
  }

  /** The same plan in the season of the round, with a name that says so. */
  private static ObjectNode inSeason(ObjectNode example) {
    ObjectNode plan = example.deepCopy();
    plan.put("name", plan.path("name").asText() + ", " + SEASON);
    move((ArrayNode) plan.path("dates"));
    move((ArrayNode) plan.path("cores").path("dates"));
    ObjectNode season = (ObjectNode) plan.path("season");
    for (String end : List.of("from", "to")) {
      season.put(end, moved(season.path(end).asText()));
    }
    return plan;
  }

  private static void move(ArrayNode dates) {
    for (int i = 0; i < dates.size(); i++) {
      dates.set(i, dates.textNode(moved(dates.get(i).asText())));
    }
  }

  private static String moved(String date) {
    return SEASON + date.substring(4);
  }

  private void read(LocalDate date) {
    add(date, "quality", "1-9", RATER);
    add(date, "tissue_potassium", "%", null);
    boolean cores = date.getMonthValue() == 4 || date.getMonthValue() == 10;
    if (cores) {
      add(date, "soil_potassium", "mg/kg", null);
    }
  }

  private void add(LocalDate date, String outcome, String unit, @Nullable String rater) {
    List<Reading> readings = new ArrayList<>();
    for (Unit plot : plots) {
      boolean returned = plot.arm().equals("returned");
      double seasons = (date.getDayOfYear() - 110) / 175.0;
      double level = yardLevels[plot.lawn()];
      double chance = random.nextGaussian();
      String value =
          switch (outcome) {
            case "quality" -> quality(level, returned, seasons, chance);
            case "tissue_potassium" ->
                number(
                    2.0 * Math.exp(0.1 * level + (returned ? 0.12 * seasons : 0) + 0.06 * chance),
                    2);
            default ->
                number(
                    130 * Math.exp(0.3 * level + (returned ? 0.05 * seasons : 0) + 0.1 * chance),
                    0);
          };
      readings.add(reading(plot, date, outcome, value, unit, rater));
    }
    TrialReadingsSheet sheet =
        new TrialReadingsSheet(trial, null, null, null, readings, "Invented, drawn from a seed.");
    LocalDate entered = rater == null ? date.plusDays(LABORATORY_DAYS) : date;
    evening(entered)
        .add(Kind.TRIAL_READINGS, DemoBook.id("readings " + outcome + " " + date), sheet);
  }

  /**
   * Half classes from 1 to 9; a little better where clippings are returned, as the year goes on.
   */
  private static String quality(double level, boolean returned, double seasons, double chance) {
    double rating = 6.2 + 0.6 * level + (returned ? 0.4 * seasons : 0) + 0.45 * chance;
    return number(Math.min(9, Math.max(1, Math.rint(rating * 2) / 2)), 1);
  }

  private static String number(double value, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }

  private static Reading reading(
      Unit plot,
      LocalDate date,
      String outcome,
      String value,
      String unit,
      @Nullable String rater) {
    boolean test = rater == null;
    boolean soil = outcome.startsWith("soil");
    return new Reading(
        code(plot),
        date,
        outcome,
        value,
        unit,
        test ? "Fen Laboratory (invented)" : null,
        test ? soil ? "Mehlich-3" : "dry ashing" : null,
        null,
        null,
        rater,
        null,
        null,
        null);
  }

  private static String code(Unit plot) {
    return "B%d-%d".formatted(plot.block(), plot.column());
  }

  private void mishap() {
    LocalDate decided = LocalDate.of(SEASON, 7, 3);
    TrialEventSheet event =
        new TrialEventSheet(
            trial,
            decided.minusDays(1),
            TrialEventSheet.Happening.DOG_URINE,
            List.of(code(plots.get(2))),
            0.3,
            null,
            new TrialEventSheet.Exclusion(
                false,
                true,
                writing.by(),
                decided,
                "Spots are not sampled; the rest of the half stays in."),
            "Invented.");
    evening(decided).add(Kind.TRIAL_EVENT, DemoBook.id("trial dog"), event);
  }
}
