package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * Names of shapes on a map: inside a shape where they fit, level or along it and in smaller type
 * where needed; else on free ground with a line to the shape.
 */
final class MapLabels {
  private static final double SMALLEST_PX = 9;
  private static final double MIDDLE_PX = 11;

  /** Small, but inside its shape and so never mistaken; a map can be enlarged. */
  private static final double TINY_PX = 7;

  /** Of the type size: what a line of letters and digits takes, and its middle above the base. */
  private static final double LINE = 0.86;

  private static final double HALF_LETTER = 0.35;
  private static final double AIR_PX = 2;
  private static final double DOT_PX = 1.6;
  private static final double STEP_PX = 5;
  private static final double REACH_PX = 120;
  private static final int MOST_MISSES = 12;
  private static final int STEPS = 4;
  private static final int MANY = 10;
  private static final double MOST = 0.97;
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private final OutlineView view;
  private final Svg svg;
  private final LabelPlaces places;
  private final PreparedGeometry shapes;
  private final List<LineString> lines = new ArrayList<>();
  private final double typePx;
  private int misses;

  /**
   * @param shapes all of them, m; a name with a line stands on none
   * @param typePx size of names where there is room
   */
  MapLabels(OutlineView view, Svg svg, LabelPlaces places, Geometry shapes, double typePx) {
    this.view = view;
    this.svg = svg;
    this.places = places;
    this.shapes = PreparedGeometryFactory.prepare(onMap(view, shapes));
    this.typePx = typePx;
  }

  private static Geometry onMap(OutlineView view, Geometry shapeM) {
    return new AffineTransformation(view.pxPerM(), 0, view.left(), 0, -view.pxPerM(), view.bottom())
        .transform(shapeM);
  }

  /** The type size where there is room, px. */
  double typePx() {
    return typePx;
  }

  /** Whether a rectangle lies on none of the shapes. */
  boolean isOffShapes(Box box) {
    return !shapes.intersects(geometry(box));
  }

  /**
   * The largest type in which most of many names have room inside their shapes, so that they look
   * alike; of few names each has its own.
   *
   * @param alongDeg direction in which the shapes are long, clockwise from north
   */
  double commonSizePx(Map<String, Geometry> shapesM, double alongDeg) {
    for (double sizePx : new double[] {typePx, MIDDLE_PX, SMALLEST_PX}) {
      long fitting =
          shapesM.entrySet().stream()
              .filter(
                  each -> {
                    Geometry shape = onMap(view, each.getValue());
                    List<Point> spots = spots(shape, alongDeg);
                    return inside(each.getKey(), shape, spots, alongDeg, sizePx).isPresent();
                  })
              .count();
      if (shapesM.size() < MANY || fitting >= MOST * shapesM.size()) {
        return sizePx;
      }
    }
    return TINY_PX;
  }

  /**
   * Names a shape, inside it or with a line.
   *
   * @param alongDeg direction in which it is long, clockwise from north
   * @param mostPx largest type
   * @return the middle of the name where it stands level inside; else null
   */
  @Nullable Point name(
      String words, Geometry shapeM, double alongDeg, double mostPx, String cssClass) {
    Geometry shape = onMap(view, shapeM);
    List<Point> spots = spots(shape, alongDeg);
    for (double sizePx : new double[] {typePx, MIDDLE_PX, SMALLEST_PX, TINY_PX}) {
      Optional<Turned> placed =
          sizePx > mostPx ? Optional.empty() : inside(words, shape, spots, alongDeg, sizePx);
      if (placed.isPresent()) {
        draw(placed.get().as(cssClass));
        return placed.get().angleDeg() == 0 ? placed.get().middle() : null;
      }
    }
    withLine(words, spots, cssClass);
    return null;
  }

  /** Words where they have room inside a shape, level or along it. */
  private Optional<Turned> inside(
      String words, Geometry shape, List<Point> spots, double alongDeg, double sizePx) {
    return DoubleStream.of(0, level(alongDeg - 90), level(alongDeg))
        .boxed()
        .flatMap(angle -> spots.stream().map(at -> new Turned(words, at, angle, sizePx, "")))
        .filter(label -> fits(shape, label))
        .findFirst();
  }

  /** Level words about a point, where they have room inside a shape there. */
  void nameAt(Point middle, String words, Geometry shapeM, String cssClass) {
    Turned label = new Turned(words, middle, 0, typePx, cssClass);
    if (fits(onMap(view, shapeM), label)) {
      draw(label);
    }
  }

  /**
   * Words in small type on free ground, with a line from the nearest of the anchors; nothing where
   * there is none within reach, or where others have found none so often that the map is full.
   */
  void withLine(String words, List<Point> anchors, String cssClass) {
    if (misses >= MOST_MISSES) {
      return;
    }
    double width = TextWidth.ofPx(words, SMALLEST_PX) + 2 * AIR_PX;
    double height = LINE * SMALLEST_PX + 2 * AIR_PX;
    anchors.stream()
        .flatMap(anchor -> around(anchor, width, height))
        .sorted(Comparator.comparingDouble(Room::apartPx))
        .filter(room -> places.isFree(room.box()) && isOpen(room.box(), room.line()))
        .findFirst()
        .ifPresentOrElse(room -> draw(words, room.box(), room.line(), cssClass), () -> misses++);
  }

  /** Rooms for words within reach of an anchor. */
  private static Stream<Room> around(Point anchor, double width, double height) {
    List<Room> rooms = new ArrayList<>();
    for (double y = -REACH_PX - height; y <= REACH_PX; y += STEP_PX) {
      for (double x = -REACH_PX - width; x <= REACH_PX; x += STEP_PX) {
        rooms.add(Room.of(anchor, new Box(anchor.x() + x, anchor.y() + y, width, height)));
      }
    }
    return rooms.stream();
  }

  /** Room for words, and the line to it from an anchor. */
  private record Room(Point anchor, Box box, Point edge, double apartPx) {
    static Room of(Point anchor, Box box) {
      Point edge =
          new Point(
              Math.max(box.x(), Math.min(box.right(), anchor.x())),
              Math.max(box.y(), Math.min(box.bottom(), anchor.y())));
      return new Room(anchor, box, edge, Math.hypot(edge.x() - anchor.x(), edge.y() - anchor.y()));
    }

    LineString line() {
      return GEOMETRY.createLineString(
          new Coordinate[] {
            new Coordinate(anchor.x(), anchor.y()), new Coordinate(edge.x(), edge.y())
          });
    }
  }

  private boolean isOpen(Box box, LineString line) {
    return lines.stream().noneMatch(line::intersects) && isOffShapes(box);
  }

  private static Geometry geometry(Box box) {
    return GEOMETRY.toGeometry(new Envelope(box.x(), box.right(), box.y(), box.bottom()));
  }

  private void draw(String words, Box room, LineString line, String cssClass) {
    Coordinate from = line.getCoordinateN(0);
    Coordinate to = line.getCoordinateN(1);
    svg.line(new Point(from.x, from.y), new Point(to.x, to.y), "leader");
    svg.circle(new Point(from.x, from.y), DOT_PX, "leader-dot");
    double middle = room.x() + room.width() / 2;
    double base = room.y() + room.height() / 2 + HALF_LETTER * SMALLEST_PX;
    svg.words(new Label(new Point(middle, base), Label.Align.MIDDLE, SMALLEST_PX, cssClass, words));
    places.keepFree(room);
    places.keepFree(List.of(new Point(from.x, from.y), new Point(to.x, to.y)));
    lines.add(line);
  }

  private boolean fits(Geometry shape, Turned label) {
    return shape.covers(label.outline()) && label.boxes().stream().allMatch(places::isFree);
  }

  private void draw(Turned label) {
    label.boxes().forEach(places::keepFree);
    svg.turned(label.label(), label.angleDeg(), label.middle());
  }

  /** Places inside a shape on a line through its middle, from the middle outwards. */
  private static List<Point> spots(Geometry shape, double alongDeg) {
    Coordinate middle = shape.getInteriorPoint().getCoordinate();
    Envelope box = shape.getEnvelopeInternal();
    double step = Math.hypot(box.getWidth(), box.getHeight()) / (2 * STEPS + 1);
    double along = Math.toRadians(alongDeg);
    List<Point> spots = new ArrayList<>(List.of(new Point(middle.x, middle.y)));
    for (int i = 1; i <= STEPS; i++) {
      for (int way : new int[] {-1, 1}) {
        double x = middle.x + way * i * step * Math.sin(along);
        double y = middle.y - way * i * step * Math.cos(along);
        if (shape.contains(GEOMETRY.createPoint(new Coordinate(x, y)))) {
          spots.add(new Point(x, y));
        }
      }
    }
    return spots;
  }

  /** The angle of a line of words that is not upside down, degrees clockwise. */
  private static double level(double degrees) {
    double turned = ((degrees % 180) + 180) % 180;
    return turned > 90 ? turned - 180 : turned;
  }

  /** Words about their middle, turned clockwise. */
  private record Turned(
      String words, Point middle, double angleDeg, double sizePx, String cssClass) {
    Turned as(String otherClass) {
      return new Turned(words, middle, angleDeg, sizePx, otherClass);
    }

    double width() {
      return TextWidth.ofPx(words, sizePx);
    }

    Geometry outline() {
      double height = LINE * sizePx;
      Geometry upright =
          GEOMETRY.toGeometry(
              new Envelope(
                  middle.x() - width() / 2,
                  middle.x() + width() / 2,
                  middle.y() - height / 2,
                  middle.y() + height / 2));
      return AffineTransformation.rotationInstance(Math.toRadians(angleDeg), middle.x(), middle.y())
          .transform(upright);
    }

    /** The room they take, as small upright boxes along the line. */
    List<Box> boxes() {
      double side = LINE * sizePx;
      int number = (int) Math.ceil(width() / side);
      double step = number == 1 ? 0 : (width() - side) / (number - 1);
      double turn = Math.toRadians(angleDeg);
      List<Box> boxes = new ArrayList<>();
      for (int i = 0; i < number; i++) {
        double along = (i - (number - 1) / 2.0) * step;
        boxes.add(
            new Box(
                middle.x() + along * Math.cos(turn) - side / 2,
                middle.y() + along * Math.sin(turn) - side / 2,
                side,
                side));
      }
      return boxes;
    }

    Label label() {
      Point anchor = new Point(middle.x(), middle.y() + HALF_LETTER * sizePx);
      return new Label(anchor, Label.Align.MIDDLE, sizePx, cssClass, words);
    }
  }
}
