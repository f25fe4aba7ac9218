package leafturn.records.shape;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.locationtech.proj4j.CRSFactory;
import org.locationtech.proj4j.ProjCoordinate;
import org.locationtech.proj4j.proj.Projection;

/**
 * A plain metric grid about an anchor: the transverse Mercator projection of the WGS84 ellipsoid
 * with the anchor's meridian in the middle, the anchor as origin and true scale there. Ten
 * kilometres away lengths come out too great by little more than a millionth, x² / 2R², and areas
 * by twice that; angles are true.
 */
final class LocalGrid {
  private final Projection projection;

  /** A place on the earth, degrees east and north. */
  record LonLat(double longitudeDeg, double latitudeDeg) {
    /** The place in words, to about a centimetre. */
    String words() {
      return "longitude %s, latitude %s".formatted(number(longitudeDeg), number(latitudeDeg));
    }

    private static String number(double degrees) {
      BigDecimal rounded = BigDecimal.valueOf(degrees).setScale(7, RoundingMode.HALF_EVEN);
      return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
  }

  LocalGrid(Anchor anchor) {
    String[] definition = {
      "+proj=tmerc",
      "+ellps=WGS84",
      "+lon_0=" + BigDecimal.valueOf(anchor.longitudeDeg()).toPlainString(),
      "+lat_0=" + BigDecimal.valueOf(anchor.latitudeDeg()).toPlainString(),
      "+k=1",
      "+x_0=0",
      "+y_0=0",
      "+units=m"
    };
    projection = new CRSFactory().createFromParameters("local grid", definition).getProjection();
  }

  /** x and y of a place on the grid, m; not limited to where corners may lie. */
  double[] onGrid(LonLat place) {
    ProjCoordinate out = new ProjCoordinate();
    projection.project(new ProjCoordinate(place.longitudeDeg(), place.latitudeDeg()), out);
    return new double[] {out.x, out.y};
  }

  /** The place on the earth of a corner. */
  LonLat onEarth(Corner corner) {
    ProjCoordinate out = new ProjCoordinate();
    projection.inverseProject(new ProjCoordinate(corner.xM(), corner.yM()), out);
    return new LonLat(out.x, out.y);
  }
}
