package leafturn.trials.design.ground;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * A plot cut into cells of equal area, one for each core: the longer side is halved by area again
 * and again, so that cells are compact and holes in the plot count for nothing.
 */
public final class EqualCells {
  private static final Frame QUARTER_TURN = new Frame(90);

  private EqualCells() {}

  /**
   * The cells, on the lawn's grid.
   *
   * @param frame along whose axes the plot is cut
   * @param number of cells, 1 or more
   */
  public static List<Geometry> of(Geometry plot, Frame frame, int number) {
    List<Geometry> cells = new ArrayList<>();
    cut(frame.onto(plot), number, cells);
    return cells.stream().map(frame::back).toList();
  }

  private static void cut(Geometry part, int number, List<Geometry> cells) {
    if (number == 1) {
      cells.add(part);
      return;
    }
    Envelope box = part.getEnvelopeInternal();
    if (box.getHeight() > box.getWidth()) {
      List<Geometry> turned = new ArrayList<>();
      cutAcross(QUARTER_TURN.onto(part), number, turned);
      turned.forEach(cell -> cells.add(QUARTER_TURN.back(cell)));
    } else {
      cutAcross(part, number, cells);
    }
  }

  private static void cutAcross(Geometry part, int number, List<Geometry> cells) {
    Envelope box = part.getEnvelopeInternal();
    int lower = number / 2;
    double at = new AreaAcross(part).limitOfShare((double) lower / number);
    Envelope below = new Envelope(box.getMinX(), at, box.getMinY(), box.getMaxY());
    Envelope above = new Envelope(at, box.getMaxX(), box.getMinY(), box.getMaxY());
    cut(Surface.within(part, below), lower, cells);
    cut(Surface.within(part, above), number - lower, cells);
  }
}
