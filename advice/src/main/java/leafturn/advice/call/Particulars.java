package leafturn.advice.call;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What goes with an answer: its cuts, the last safe day, the hours, water, where clippings may go,
 * and where rules of thumb disagree.
 *
 * @param cuts the cuts of the best choice, in order of days
 * @param lastSafeDay last day of mowing on which in nine of ten possible seasons no more than a
 *     third of the height would come off, never before the day of the answer; null when there is
 *     none or none is in sight
 * @param noSafeDay why there is no last safe day though the lawn is to be mown, in a sentence
 *     without its stop; empty where there is one or none is in sight
 * @param hours the hours of today and tomorrow in which the grass is dry and free of frost
 * @param byTheHour every hour of these days over the possible weathers, with what the hours mean;
 *     null where nothing was reckoned
 * @param conflicts where rules of thumb disagree, and which of them decides, one sentence each
 * @param watering when and how much to water, one sentence each; empty when there is no need
 * @param placing where collected clippings may go
 * @param lying past cuts whose clippings have not all broken down, the latest first
 */
public record Particulars(
    List<Cut> cuts,
    @Nullable LocalDate lastSafeDay,
    String noSafeDay,
    List<Hours> hours,
    @Nullable DryHours byTheHour,
    List<String> conflicts,
    List<String> watering,
    Placing placing,
    List<LyingCut> lying) {
  /** Nothing beside the answer. */
  public static final Particulars NONE =
      new Particulars(
          List.of(), null, "", List.of(), null, List.of(), List.of(), Placing.ANYWHERE, List.of());

  public Particulars {
    cuts = List.copyOf(cuts);
    lying = List.copyOf(lying);
    hours = List.copyOf(hours);
    conflicts = List.copyOf(conflicts);
    watering = List.copyOf(watering);
  }

  /**
   * A cut.
   *
   * @param day its day
   * @param toMm height it is cut to, mm
   * @param returned true when its clippings stay on the turf
   */
  public record Cut(LocalDate day, double toMm, boolean returned) {}

  /**
   * Hours of a day, by its clock.
   *
   * @param day the day
   * @param from first hour to mow in, 0 to 23; null when there is none
   * @param to o'clock at its end; null when there is none
   * @param words the hours and what the leaves are wet from before
   */
  public record Hours(LocalDate day, @Nullable Integer from, @Nullable Integer to, String words) {}

  /**
   * Where collected clippings may go, by plain rules; a plan of places is another question.
   *
   * @param offTheLawn false when a label or practice keeps them on the lawn
   * @param beds true when they may mulch beds
   * @param heap true when a heap may take them
   * @param sentence the same in words; empty when nothing forbids anything
   */
  public record Placing(boolean offTheLawn, boolean beds, boolean heap, String sentence) {
    /** Nothing known forbids a place. */
    public static final Placing ANYWHERE = new Placing(true, true, true, "");
  }
}
