package leafturn.trials.design.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leafturn.trials.design.ground.FixedCorners;
import leafturn.trials.design.ground.Place;
import leafturn.trials.design.ground.StripBlocks.Dropped;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.operation.distance.DistanceOp;

/**
 * A plot that would lie beside the others but cannot be used.
 *
 * @param mark on the map of its lawn: X1, X2, ...
 * @param place what there is of it
 * @param beside where it lies from the nearest plot, as "south-west of B2-1"
 * @param middle a place in the middle of it
 * @param why it cannot be used
 */
public record DroppedPlot(String mark, Place place, String beside, TapedPlace middle, String why) {
  /** Those of a lawn. */
  static List<DroppedPlot> of(List<Dropped> dropped, List<LaidPlot> plots, FixedCorners fixed) {
    List<DroppedPlot> all = new ArrayList<>();
    for (Dropped each : dropped) {
      Point middle = each.place().plot().getInteriorPoint();
      all.add(
          new DroppedPlot(
              "X" + (all.size() + 1),
              each.place(),
              beside(middle, plots),
              TapedPlace.of(fixed, middle.getCoordinate()),
              each.why()));
    }
    return all;
  }

  private static String beside(Point middle, List<LaidPlot> plots) {
    LaidPlot nearest =
        plots.stream()
            .min(Comparator.comparingDouble(plot -> plot.place().plot().distance(middle)))
            .orElseThrow();
    Geometry plot = nearest.place().plot();
    Coordinate edge = DistanceOp.nearestPoints(plot, middle)[0];
    return "%s of %s".formatted(Compass.from(edge, middle.getCoordinate()), nearest.code());
  }
}
