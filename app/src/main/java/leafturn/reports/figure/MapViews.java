package leafturn.reports.figure;

import leafturn.records.shape.Outline;
import leafturn.trials.design.layout.LaidLawn;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * The parts of a map: the whole lawn, and the plots enlarged below it where they are small; on a
 * small map the plots alone.
 *
 * @param whole of the whole lawn; null where it is not drawn
 * @param near of the plots; null where the whole lawn shows them large enough
 * @param window the part of the lawn that is enlarged, m
 */
record MapViews(@Nullable OutlineView whole, @Nullable OutlineView near, Envelope window) {
  /** Plots that could be drawn so much larger are drawn a second time, enlarged. */
  private static final double WORTH_ENLARGING = 1.4;

  /** Most height of the whole lawn above its enlarged plots, without margins and foot. */
  private static final double WHOLE_PX = 130;

  private static final double AROUND_FRACTION = 0.08;
  private static final double MOST_OF_MAP = 0.67;

  /** Room for the words above the enlarged plots. */
  static final double HEAD_PX = 30;

  /** The parts of a map that is not higher than some px. */
  static MapViews of(LaidLawn lawn, Geometry plots, OutlineFormat format, double mostHeightPx) {
    Envelope turf = lawn.surface().turf().getEnvelopeInternal();
    Envelope window = plots.getEnvelopeInternal();
    window.expandBy(AROUND_FRACTION * Math.max(window.getWidth(), window.getHeight()));
    OutlineView whole = OutlineView.of(bounds(turf), format, mostHeightPx);
    OutlineView alone = OutlineView.of(bounds(window), format, mostHeightPx);
    if (alone.pxPerM() < WORTH_ENLARGING * whole.pxPerM()) {
      return new MapViews(whole, null, window);
    }
    double wholePx = WHOLE_PX + 2 * format.marginPx + format.footPx();
    if (wholePx > MOST_OF_MAP * mostHeightPx) {
      return new MapViews(null, alone, window);
    }
    OutlineView above = OutlineView.of(bounds(turf), format, wholePx);
    double top = above.size().height() + HEAD_PX;
    double nearPx = mostHeightPx - (format.isSheet() ? top : 0);
    return new MapViews(above, OutlineView.of(bounds(window), format, nearPx), window);
  }

  private static Outline.Bounds bounds(Envelope box) {
    return new Outline.Bounds(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
  }

  /** Across the thinnest plot where plots are drawn largest, px. */
  double thinnestPx(LaidLawn lawn) {
    OutlineView drawn = near == null ? whole : near;
    double thinnestM =
        lawn.plots().stream()
            .mapToDouble(plot -> new MinimumDiameter(plot.place().plot()).getLength())
            .min()
            .orElse(0);
    return drawn == null ? 0 : drawn.pxPerM() * thinnestM;
  }
}
