package leafturn.trials.design;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Plans for tests, changed step by step from a split yard of eight rectangles. */
public final class Plans {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final LocalDate FROM = LocalDate.of(2026, 4, 1);

  private Plans() {}

  /** A polygon through x, y, x, y, ... */
  public static Geometry polygon(double... coordinates) {
    Coordinate[] ring = new Coordinate[coordinates.length / 2 + 1];
    for (int i = 0; i < ring.length; i++) {
      int at = 2 * i % coordinates.length;
      ring[i] = new Coordinate(coordinates[at], coordinates[at + 1]);
    }
    return GEOMETRY.createPolygon(ring);
  }

  /** A rectangle with its south-western corner at x, y. */
  public static Geometry rectangle(double x, double y, double width, double depth) {
    return polygon(x, y, x + width, y, x + width, y + depth, x, y + depth);
  }

  /** A lawn mown with a deck of half a metre. */
  public static TrialLawn lawn(String name, Geometry turf, @Nullable Double bearingDeg) {
    return lawn(name, turf, List.of(), bearingDeg);
  }

  /** The same with beds. */
  public static TrialLawn lawn(
      String name, Geometry turf, List<Geometry> beds, @Nullable Double bearingDeg) {
    TrialMower mower = new TrialMower(500, TrialMower.Discharge.RIGHT);
    return new TrialLawn(name, turf, beds, null, mower, bearingDeg);
  }

  /** Names t1, t2, ... as treatments. */
  public static List<Arm> arms(int number, String letter) {
    return IntStream.rangeClosed(1, number)
        .mapToObj(i -> new Arm(letter + i, null, 1, null))
        .toList();
  }

  /** A plan of a design on these lawns. */
  public static TrialPlan plan(
      Design design, int arms, int blocks, List<TrialLawn> lawns, long seed) {
    List<Arm> second = design.hasSecondFactor() ? arms(3, "s") : List.of();
    Treatments treatments =
        new Treatments(
            "practice",
            arms(arms, "t"),
            design.hasSecondFactor() ? "feed" : null,
            second,
            List.of(new Contrast("t1", "t2")));
    Arrangement arrangement =
        new Arrangement(design, blocks, Arrangement.Sides.COIN, List.of(), PlotRule.USUAL);
    return new TrialPlan(
        "Test", "Which?", treatments, arrangement, lawns, observing(0, 1), protocol(), seed);
  }

  /** One split yard on which clippings are returned and collected. */
  public static TrialPlan returnedAndCollected(TrialLawn lawn, long seed) {
    TrialPlan plan = plan(Design.SPLIT_YARD, 2, 1, List.of(lawn), seed);
    List<Arm> arms =
        List.of(
            new Arm("collected", Arm.Clippings.COLLECTED, 1, null),
            new Arm("returned", Arm.Clippings.RETURNED, 1, null));
    Treatments treatments =
        new Treatments(
            "practice", arms, null, List.of(), List.of(new Contrast("returned", "collected")));
    return with(plan, treatments, plan.arrangement(), plan.observing());
  }

  /** The same plan with another arrangement. */
  public static TrialPlan with(TrialPlan plan, Arrangement arrangement) {
    return with(plan, plan.treatments(), arrangement, plan.observing());
  }

  /** The same plan with one outcome more. */
  public static TrialPlan with(TrialPlan plan, Outcome more) {
    Observing was = plan.observing();
    List<Outcome> outcomes = new ArrayList<>(was.outcomes());
    outcomes.add(more);
    return with(
        plan,
        plan.treatments(),
        plan.arrangement(),
        new Observing(was.from(), was.to(), was.dates(), was.cores(), outcomes, was.exclusions()));
  }

  /** The same plan with cores on so many dates, three weeks apart. */
  public static TrialPlan withCores(TrialPlan plan, int perPlot, int dates) {
    return with(plan, plan.treatments(), plan.arrangement(), observing(perPlot, dates));
  }

  /** The same plan observed and sampled on these days, with so many bags of a plot. */
  public static TrialPlan sampled(TrialPlan plan, List<LocalDate> days, int bags) {
    Observing was = plan.observing();
    CoreRule rule = was.cores();
    CoreRule cores =
        new CoreRule(
            rule.perPlot(),
            rule.depthCm(),
            bags,
            rule.blindDuplicateFraction(),
            rule.fromOldHolesM(),
            days);
    return with(
        plan,
        plan.treatments(),
        plan.arrangement(),
        new Observing(was.from(), was.to(), days, cores, was.outcomes(), was.exclusions()));
  }

  private static TrialPlan with(
      TrialPlan plan, Treatments treatments, Arrangement arrangement, Observing observing) {
    return new TrialPlan(
        plan.name(),
        plan.question(),
        treatments,
        arrangement,
        plan.lawns(),
        observing,
        plan.protocol(),
        plan.seed());
  }

  /** The primary outcome of the plans: a rating from 1 to 9. */
  public static Outcome quality(double margin) {
    return new Outcome(
        "quality",
        Outcome.Kind.RATING,
        "1-9",
        1.0,
        9.0,
        Outcome.Scale.IDENTITY,
        Outcome.Summary.SEASON_MEAN,
        margin,
        true);
  }

  private static Observing observing(int perPlot, int dates) {
    List<LocalDate> days = IntStream.range(0, dates).mapToObj(i -> FROM.plusDays(21L * i)).toList();
    return new Observing(
        FROM,
        FROM.plusDays(250),
        days,
        new CoreRule(perPlot, 10, 2, 0.1, 0.3, days),
        List.of(quality(0.5)),
        List.of());
  }

  private static Protocol protocol() {
    return new Protocol(null, null, true, true, true, true, Protocol.Feed.EQUAL);
  }

  /** Rectangles of 20 by 10 m. */
  public static List<TrialLawn> yards(int number) {
    List<TrialLawn> lawns = new ArrayList<>();
    for (int i = 1; i <= number; i++) {
      lawns.add(lawn("yard " + i, rectangle(0, 0, 20, 10), null));
    }
    return lawns;
  }
}
