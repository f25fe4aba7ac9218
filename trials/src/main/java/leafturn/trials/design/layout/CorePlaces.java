package leafturn.trials.design.layout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leafturn.trials.design.CoreRule;
import leafturn.trials.design.NoRoomException;
import leafturn.trials.design.ground.EqualCells;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * Where the cores of a plot are taken: one at a random place of each of equal cells, new on each
 * date and away from the holes of earlier ones.
 */
final class CorePlaces {
  private static final int TRIES = 400;
  private static final double STEPS_PER_M = 100;

  /** Circles are drawn as polygons inside them; this makes up for it. */
  private static final double WIDER = 1.01;

  private static final int QUADRANT_SEGMENTS = 16;

  private final long seed;
  private final CoreRule rule;
  private final List<Coordinate> holes = new ArrayList<>();

  private CorePlaces(long seed, CoreRule rule) {
    this.seed = seed;
    this.rule = rule;
  }

  /**
   * The cores of one plot on all dates.
   *
   * @param number of the plot in the trial, from 0
   * @throws NoRoomException when old holes leave no place
   */
  static List<Core> of(long seed, CoreRule rule, LaidLawn lawn, LaidPlot plot, int number) {
    if (rule.perPlot() == 0 || rule.dates().isEmpty()) {
      return List.of();
    }
    return new CorePlaces(seed, rule)
        .cores(
            EqualCells.of(plot.place().measured(), lawn.frame(), rule.perPlot()),
            plot.code(),
            number);
  }

  private List<Core> cores(List<Geometry> cells, String plot, int plotNumber) {
    List<Core> cores = new ArrayList<>();
    for (int day = 0; day < rule.dates().size(); day++) {
      LocalDate date = rule.dates().get(day);
      List<Coordinate> taken = new ArrayList<>();
      for (int cell = 0; cell < cells.size(); cell++) {
        Coordinate place =
            place(cells.get(cell), Chance.of(seed, Purpose.CORES, plotNumber, day, cell));
        if (place == null) {
          throw new NoRoomException(
              ("on %s no place is left for core %d of %d in plot %s, %s m from the holes of earlier"
                      + " dates; take fewer cores or fewer dates of cores, or larger plots.")
                  .formatted(date, cell + 1, cells.size(), plot, rule.fromOldHolesM()));
        }
        taken.add(place);
        cores.add(new Core(plot, date, cell + 1, cell % rule.composites() + 1, place.x, place.y));
      }
      holes.addAll(taken);
    }
    return cores;
  }

  private @Nullable Coordinate place(Geometry cell, Chance chance) {
    Coordinate place = tried(cell, chance);
    if (place != null || holes.isEmpty()) {
      return place;
    }
    Geometry free = free(cell);
    return free.isEmpty() ? null : tried(free, chance);
  }

  /** What of a cell old holes leave. */
  private Geometry free(Geometry cell) {
    Envelope near = new Envelope(cell.getEnvelopeInternal());
    near.expandBy(WIDER * rule.fromOldHolesM());
    GeometryFactory geometry = cell.getFactory();
    List<Geometry> circles =
        holes.stream()
            .filter(near::contains)
            .map(
                hole ->
                    geometry
                        .createPoint(hole)
                        .buffer(WIDER * rule.fromOldHolesM(), QUADRANT_SEGMENTS))
            .toList();
    Geometry closed = UnaryUnionOp.union(circles, geometry);
    return closed == null ? cell : cell.difference(closed);
  }

  private @Nullable Coordinate tried(Geometry area, Chance chance) {
    Envelope box = area.getEnvelopeInternal();
    IndexedPointInAreaLocator locator = new IndexedPointInAreaLocator(area);
    for (int i = 0; i < TRIES; i++) {
      Coordinate place =
          new Coordinate(
              toCentimetre(box.getMinX() + chance.share() * box.getWidth()),
              toCentimetre(box.getMinY() + chance.share() * box.getHeight()));
      if (locator.locate(place) == Location.INTERIOR && isFarFromHoles(place)) {
        return place;
      }
    }
    return null;
  }

  private boolean isFarFromHoles(Coordinate place) {
    return holes.stream().allMatch(hole -> hole.distance(place) >= rule.fromOldHolesM());
  }

  private static double toCentimetre(double coordinateM) {
    return Math.rint(coordinateM * STEPS_PER_M) / STEPS_PER_M;
  }
}
