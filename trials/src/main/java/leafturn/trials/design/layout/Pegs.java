package leafturn.trials.design.layout;

import java.util.ArrayList;
import java.util.List;
import leafturn.trials.design.ground.FixedCorners;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** The corners of plots that have to be found on the ground: all but those of the lawn itself. */
final class Pegs {
  /** Corners nearer than this are one, m. */
  private static final double NEAR_M = 0.01;

  private final Geometry turf;
  private final List<Coordinate> places = new ArrayList<>();
  private final List<List<String>> plotsAt = new ArrayList<>();

  private Pegs(Geometry turf) {
    this.turf = turf;
  }

  static Pegs of(Geometry turf, List<LaidPlot> plots) {
    Pegs pegs = new Pegs(turf);
    plots.forEach(pegs::add);
    return pegs;
  }

  List<Coordinate> places() {
    return places;
  }

  private void add(LaidPlot plot) {
    Geometry geometry = plot.place().plot();
    for (int piece = 0; piece < geometry.getNumGeometries(); piece++) {
      Polygon polygon = (Polygon) geometry.getGeometryN(piece);
      Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
      for (int i = 0; i + 1 < ring.length; i++) {
        if (!isOwnCorner(ring[i])) {
          add(ring[i], plot.code());
        }
      }
    }
  }

  private boolean isOwnCorner(Coordinate place) {
    for (Coordinate corner : turf.getCoordinates()) {
      if (corner.distance(place) < NEAR_M) {
        return true;
      }
    }
    return false;
  }

  private void add(Coordinate place, String code) {
    for (int known = 0; known < places.size(); known++) {
      if (places.get(known).distance(place) < NEAR_M) {
        plotsAt.get(known).add(code);
        return;
      }
    }
    places.add(place);
    plotsAt.add(new ArrayList<>(List.of(code)));
  }

  List<Peg> from(FixedCorners fixed) {
    List<Peg> pegs = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      pegs.add(
          new Peg(
              i + 1,
              plotsAt.get(i).stream().distinct().toList(),
              TapedPlace.of(fixed, places.get(i))));
    }
    return pegs;
  }
}
