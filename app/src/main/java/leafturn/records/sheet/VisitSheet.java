package leafturn.records.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * What was measured on a visit to a lawn; something of it must be there.
 *
 * @param lawn id of the lawn
 * @param day the day of the visit
 * @param heightsMm heights of the grass at up to twenty points, ten as a rule, mm, 3 to 1000
 * @param cover a point count, or null
 * @param compaction how hard the ground is, or null
 * @param thatchPlugsMm thatch of up to twenty plugs, three as a rule, mm, 0 to 150
 * @param photographs photographs from fixed points
 * @param note anything to remember; may be null
 */
public record VisitSheet(
    String lawn,
    LocalDate day,
    List<Double> heightsMm,
    @Nullable Cover cover,
    @Nullable Compaction compaction,
    List<Double> thatchPlugsMm,
    List<FixedPoint> photographs,
    @Nullable String note)
    implements Content {
  public VisitSheet {
    heightsMm = List.copyOf(heightsMm);
    thatchPlugsMm = List.copyOf(thatchPlugsMm);
    photographs = List.copyOf(photographs);
  }

  /**
   * A photograph from a point that is found again.
   *
   * @param point the point's name
   * @param photograph id of the photograph
   */
  public record FixedPoint(String point, String photograph) {
    private static FixedPoint read(JsonObject json) {
      FixedPoint point =
          new FixedPoint(
              json.requiredText("point", Limits.NAME, "the name of the point"),
              json.requiredId("photograph", "a photograph"));
      json.refuseOthers();
      return point;
    }
  }

  static VisitSheet read(JsonObject json) {
    String lawn = json.requiredId("lawn", "the lawn");
    LocalDate day = json.requiredDate("day");
    List<Double> heights = Readings.grassMm(json);
    Cover cover = Part.read(json, "cover", Cover::read);
    Compaction compaction = Part.read(json, "compaction", Compaction::read);
    List<Double> plugs = Readings.thatchMm(json, "thatchPlugsMm");
    List<FixedPoint> photographs =
        json.objects("photographs").stream().map(FixedPoint::read).toList();
    String note = json.text("note", Limits.NOTE);
    if (Stream.of("heightsMm", "cover", "compaction", "thatchPlugsMm", "photographs", "note")
        .noneMatch(json::holdsSomething)) {
      json.requireItems("heightsMm", "heights, or anything else that was found");
    }
    json.end();
    return new VisitSheet(lawn, day, heights, cover, compaction, plugs, photographs, note);
  }

  /** This visit with other photographs. */
  public VisitSheet with(List<FixedPoint> others) {
    return new VisitSheet(lawn, day, heightsMm, cover, compaction, thatchPlugsMm, others, note);
  }

  /** Mean height of the grass, mm. */
  public OptionalDouble meanHeightMm() {
    return Readings.mean(heightsMm);
  }

  /** Standard deviation of the heights, mm. */
  public OptionalDouble heightSpreadMm() {
    return Readings.spread(heightsMm);
  }

  /** Mean thatch of the plugs, mm. */
  public OptionalDouble meanThatchMm() {
    return Readings.mean(thatchPlugsMm);
  }
}
