package leafturn.records.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leafturn.quantity.Units;
import leafturn.records.Choice;
import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * Advice as it was given for a lawn and day, with what it rested on. It is written by the program,
 * never changed, and nothing is computed from it.
 *
 * @param lawn id of the lawn
 * @param day the day it was given for
 * @param way how it first reached somebody
 * @param units the units of its words
 * @param choice what to do, for instance "mow and return"
 * @param mowOn the day to mow, or null when nothing was to be mown in sight
 * @param returned whether the clippings were to stay on the lawn, or null where none were cut
 * @param sentence the answer in one sentence
 * @param reasons in order of weight
 * @param mowBy days until a third of the height would come off, or null when not in sight
 * @param forecast the height to be met if it was not mown
 * @param expected what the cut was to bring, or null where none was advised
 * @param rules what names the table of rules it was made by: a few figures of a digest
 * @param thresholds those that differed from the standard rules, by rule
 * @param madeBy the program with its version
 */
public record AdviceSheet(
    String lawn,
    LocalDate day,
    Way way,
    Units units,
    String choice,
    @Nullable LocalDate mowOn,
    @Nullable Boolean returned,
    String sentence,
    List<Ground> reasons,
    @Nullable Range mowBy,
    Forecast forecast,
    @Nullable Expected expected,
    String rules,
    Map<String, Double> thresholds,
    String madeBy)
    implements Content {
  private static final double MOST_DAYS = 1000;
  private static final double MOST_MM = 5000;
  private static final double MOST = 1e9;
  private static final int DAY = 24;

  public AdviceSheet {
    reasons = List.copyOf(reasons);
    thresholds = java.util.Collections.unmodifiableMap(new TreeMap<>(thresholds));
  }

  /** How advice reached somebody. */
  public enum Way {
    PAGE,
    PHONE_LOG,
    CALENDAR
  }

  /**
   * A reason as it was given.
   *
   * @param rule the rule behind it
   * @param headline a few words with the number
   * @param limit the limit in words; may be null
   */
  public record Ground(String rule, String headline, @Nullable String limit) {
    private static Ground read(JsonObject json) {
      Ground ground =
          new Ground(
              json.requiredText("rule", Limits.NAME, "the rule behind it"),
              json.requiredText("headline", Limits.SENTENCE, "a few words with the number"),
              json.text("limit", Limits.SENTENCE));
      json.refuseOthers();
      return ground;
    }
  }

  /**
   * A quantity over the possible seasons: 10th, 50th and 90th percentile.
   *
   * @param low 10th percentile
   * @param middle median
   * @param high 90th percentile
   */
  public record Range(double low, double middle, double high) {
    private static Range read(JsonObject json, double most) {
      Range range =
          new Range(
              json.requiredNumber("low", -most, most, ""),
              json.requiredNumber("middle", -most, most, ""),
              json.requiredNumber("high", -most, most, ""));
      if (range.low > range.middle || range.middle > range.high) {
        json.fault("middle", "it must lie from low to high.");
      }
      json.refuseOthers();
      return range;
    }

    private static @Nullable Range read(JsonObject json, String name, double most) {
      return Part.read(json, name, section -> read(section, most));
    }
  }

  /**
   * Heights by the day if the lawn was left unmown, over the possible seasons.
   *
   * @param todayMm height on the day of the advice, mm
   * @param lowMm 10th percentile from the day after on, mm
   * @param middleMm median of the same days, mm
   * @param highMm 90th percentile of the same days, mm
   */
  public record Forecast(
      double todayMm, List<Double> lowMm, List<Double> middleMm, List<Double> highMm) {
    public Forecast {
      lowMm = List.copyOf(lowMm);
      middleMm = List.copyOf(middleMm);
      highMm = List.copyOf(highMm);
    }

    private static Forecast read(JsonObject json) {
      Forecast forecast =
          new Forecast(
              json.requiredNumber("todayMm", 0, MOST_MM, "mm"),
              json.list("lowMm").numbers(0, MOST_MM, "mm"),
              json.list("middleMm").numbers(0, MOST_MM, "mm"),
              json.list("highMm").numbers(0, MOST_MM, "mm"));
      if (forecast.lowMm.size() != forecast.middleMm.size()
          || forecast.middleMm.size() != forecast.highMm.size()) {
        json.fault("middleMm", "lowMm, middleMm and highMm must tell of the same days.");
      }
      json.refuseOthers();
      return forecast;
    }

    /** The height of a day, so many days after that of the advice; null when it is not told. */
    public @Nullable Range on(long daysLater) {
      if (daysLater == 0) {
        return new Range(todayMm, todayMm, todayMm);
      }
      int at = (int) daysLater - 1;
      return at < 0 || at >= middleMm.size()
          ? null
          : new Range(lowMm.get(at), middleMm.get(at), highMm.get(at));
    }
  }

  /**
   * What the advised cut was to bring; null where the lawn's description said too little.
   *
   * @param cutToMm height that the first cut was to leave, mm; null in advice of older versions
   * @param heightTaken share of the height, 0-1
   * @param litres loose fresh clippings, litres
   * @param bags bags filled
   * @param minutes work
   * @param clumpIndex load where it lies thickest over what the turf takes
   * @param daysInSight days until the clippings are not seen any more; null where none stay
   * @param hours hours in which the grass would be dry on the day of the cut; null where they were
   *     not told
   */
  public record Expected(
      @Nullable Double cutToMm,
      @Nullable Range heightTaken,
      @Nullable Range litres,
      @Nullable Range bags,
      @Nullable Range minutes,
      @Nullable Range clumpIndex,
      @Nullable Range daysInSight,
      @Nullable Hours hours) {
    private static Expected read(JsonObject json) {
      Expected expected =
          new Expected(
              json.number("cutToMm", 0, MOST_MM, "mm"),
              Range.read(json, "heightTaken", 1),
              Range.read(json, "litres", MOST),
              Range.read(json, "bags", MOST),
              Range.read(json, "minutes", MOST),
              Range.read(json, "clumpIndex", MOST),
              Range.read(json, "daysInSight", MOST_DAYS),
              Part.read(json, "hours", Hours::read));
      json.refuseOthers();
      return expected;
    }
  }

  /**
   * Hours of a day by its clock.
   *
   * @param from the first, 0 to 24
   * @param to o'clock at their end, after the first, up to 24
   */
  public record Hours(int from, int to) {
    private static @Nullable Hours read(JsonObject json) {
      Integer from = json.wholeNumber("from", 0, DAY, "o'clock");
      Integer to = json.wholeNumber("to", 0, DAY, "o'clock");
      if (from == null || to == null || from >= to) {
        json.fault("from", "it must be given and lie before to.");
        return null;
      }
      json.refuseOthers();
      return new Hours(from, to);
    }
  }

  static AdviceSheet read(JsonObject json) {
    String lawn = json.requiredId("lawn", "the lawn");
    LocalDate day = json.requiredDate("day");
    Way way = Choice.required(json, "way", Way.class);
    Units units = Choice.required(json, "units", Units.class);
    String choice = json.requiredText("choice", Limits.NAME, "what was to be done");
    LocalDate mowOn = json.date("mowOn");
    Boolean returned = json.flag("returned");
    String sentence = json.requiredText("sentence", Limits.NOTE, "the answer in one sentence");
    List<Ground> reasons = json.objects("reasons").stream().map(Ground::read).toList();
    Range mowBy = Range.read(json, "mowBy", MOST_DAYS);
    Forecast forecast = Forecast.read(json.object("forecast"));
    Expected expected = Part.read(json, "expected", Expected::read);
    String rules = json.requiredText("rules", Limits.NAME, "what names the table of rules");
    Map<String, Double> thresholds = json.object("thresholds").numbers();
    String madeBy = json.requiredText("madeBy", Limits.NAME, "the program with its version");
    json.end();
    return new AdviceSheet(
        lawn,
        day,
        way,
        units,
        choice,
        mowOn,
        returned,
        sentence,
        reasons,
        mowBy,
        forecast,
        expected,
        rules,
        thresholds,
        madeBy);
  }

  /**
   * True when another one says the same, whoever it reached; readers of other units are given the
   * same advice in other words.
   */
  public boolean saysTheSameAs(AdviceSheet other) {
    boolean sameWords =
        units != other.units || sentence.equals(other.sentence) && reasons.equals(other.reasons);
    return sameWords && withWordsOf(other).equals(other);
  }

  private AdviceSheet withWordsOf(AdviceSheet other) {
    boolean sameRules =
        reasons.stream()
            .map(Ground::rule)
            .toList()
            .equals(other.reasons.stream().map(Ground::rule).toList());
    return new AdviceSheet(
        lawn,
        day,
        other.way,
        other.units,
        choice,
        mowOn,
        returned,
        other.sentence,
        sameRules ? other.reasons : reasons,
        mowBy,
        forecast,
        expected,
        rules,
        thresholds,
        madeBy);
  }
}
