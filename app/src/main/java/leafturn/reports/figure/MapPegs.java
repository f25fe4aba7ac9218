package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import leafturn.trials.design.layout.LaidLawn;
import leafturn.trials.design.layout.LaidPlot;
import leafturn.trials.design.layout.Peg;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;

/**
 * Corners of plots on a map, with their numbers: all of them where they find room beside their
 * corners, else those at the corners of blocks alone. A number that could be read as that of
 * another corner is left out; the table has all.
 */
final class MapPegs {
  private static final double PEG_PX = 3;
  private static final double SMALL_PEG_PX = 1.6;
  private static final double AWAY_PX = 13;
  private static final double SMALL_TYPE_PX = 9;
  private static final double SMALLEST_TYPE_PX = 7;

  /** So many numbers may stand away from their corners with a line; more are not told apart. */
  private static final int MOST_AWAY = 4;

  private static final int FEW = 40;

  /** Where no place beside a corner is free of lines, one so much farther off may be. */
  private static final double FARTHER = 1.6;

  /** More corners would take each other's room if each chose. */
  private static final int FEW_ENOUGH_TO_CHOOSE = 12;

  /** So much nearer to its own corner than to another, of what the two are apart. */
  private static final double NEARER = 0.1;

  /** From a corner to a number level with it: the corner's half and air. */
  private static final double BESIDE_PX = 5.5;

  private final OutlineView view;
  private final Svg svg;
  private final LabelPlaces labels;
  private final LabelPlaces lines;
  private final LaidLawn lawn;
  private final MapLabels names;
  private final double typePx;
  private final List<Peg> all;
  private final List<Peg> ofBlocks;

  MapPegs(LaidLawn lawn, OutlineView view, Svg svg, LabelPlaces labels, MapLabels names) {
    this.view = view;
    this.svg = svg;
    this.labels = labels;
    this.names = names;
    this.lawn = lawn;
    this.lines = lines(lawn, view);
    this.typePx = names.typePx();
    this.all = lawn.pegs();
    Map<String, Integer> blocks = new HashMap<>();
    for (LaidPlot plot : lawn.plots()) {
      blocks.put(plot.code(), plot.unit().block());
    }
    this.ofBlocks = all.stream().filter(peg -> isOfBlock(peg, blocks)).toList();
  }

  /** Room free of the edges of turf, plots and what is measured of them. */
  private static LabelPlaces lines(LaidLawn lawn, OutlineView view) {
    LabelPlaces free = new LabelPlaces(view.size());
    MapShapes shapes = new MapShapes(view);
    Stream.concat(
            Stream.of(lawn.surface().turf()),
            lawn.plots().stream()
                .flatMap(plot -> Stream.of(plot.place().plot(), plot.place().measured())))
        .flatMap(shape -> shapes.rings(shape).stream())
        .map(ring -> Stream.concat(ring.stream(), ring.stream().limit(1)).toList())
        .forEach(free::keepFree);
    return free;
  }

  /** Where one plot of a block alone has a corner, the block has one. */
  private static boolean isOfBlock(Peg peg, Map<String, Integer> blocks) {
    Map<Integer, Integer> met = new HashMap<>();
    for (String plot : peg.plots()) {
      met.merge(blocks.getOrDefault(plot, 0), 1, Integer::sum);
    }
    return met.containsValue(1);
  }

  /** Keeps the corners free of names. */
  void keepFree() {
    for (Peg peg : all) {
      Point at = at(peg);
      labels.keepFree(new Box(at.x() - PEG_PX, at.y() - PEG_PX, 2 * PEG_PX, 2 * PEG_PX));
    }
  }

  /** Draws the corners, small where they have no number, after names have their places. */
  void draw() {
    boolean roomy = isRoomy();
    for (Peg peg : all) {
      svg.circle(at(peg), roomy || ofBlocks.contains(peg) ? PEG_PX : SMALL_PEG_PX, "peg");
    }
    if (roomy) {
      all.forEach(this::number);
      return;
    }
    for (Peg peg : ofBlocks) {
      offPlots(peg, SMALL_TYPE_PX).or(() -> offPlots(peg, SMALLEST_TYPE_PX)).ifPresent(svg::words);
    }
  }

  /** A number beside its corner; with a line where there is no room and no other corner close. */
  private void number(Peg peg) {
    String number = Integer.toString(peg.number());
    labels
        .place(label(number, at(peg), typePx, AWAY_PX, "words"), besideOwn(peg))
        .ifPresentOrElse(
            svg::words,
            () -> {
              if (isAlone(peg)) {
                names.withLine(number, List.of(at(peg)), "words");
              }
            });
  }

  /** Places beside a corner that no other could claim; of few corners those on no line first. */
  private List<Point> besideOwn(Peg peg) {
    String number = Integer.toString(peg.number());
    Label label = label(number, at(peg), typePx, AWAY_PX, "words");
    List<Point> near = around(at(peg), typePx, AWAY_PX);
    List<Point> places = new ArrayList<>();
    if (all.size() <= FEW_ENOUGH_TO_CHOOSE) {
      Stream.concat(near.stream(), around(at(peg), typePx, FARTHER * AWAY_PX).stream())
          .filter(place -> lines.isFree(label.at(place).box()))
          .forEach(places::add);
    }
    places.addAll(near);
    places.removeIf(place -> !isOwn(peg, place, typePx));
    return places;
  }

  /** Whether a number there is nearest to its own corner, and on no plot but its own. */
  private boolean isOwn(Peg peg, Point base, double sizePx) {
    Point middle = new Point(base.x(), base.y() - 0.3 * sizePx);
    double own = apart(at(peg), middle);
    boolean nearest =
        all.stream()
            .filter(other -> other.number() != peg.number())
            .allMatch(
                other -> apart(at(other), middle) >= own + NEARER * apart(at(other), at(peg)));
    return nearest && isOnNoOther(peg, middle);
  }

  private boolean isOnNoOther(Peg peg, Point middle) {
    Coordinate place =
        new Coordinate(
            (middle.x() - view.left()) / view.pxPerM(),
            (view.bottom() - middle.y()) / view.pxPerM());
    return lawn.plots().stream()
        .filter(plot -> !peg.plots().contains(plot.code()))
        .noneMatch(plot -> SimplePointInAreaLocator.isContained(place, plot.place().plot()));
  }

  private boolean isAlone(Peg peg) {
    return all.size() > FEW_ENOUGH_TO_CHOOSE
        || all.stream()
            .allMatch(
                other -> other.number() == peg.number() || apart(at(other), at(peg)) >= PEG_PX);
  }

  private static double apart(Point one, Point other) {
    return Math.hypot(one.x() - other.x(), one.y() - other.y());
  }

  /** A number near its corner and on no plot. */
  private Optional<Label> offPlots(Peg peg, double sizePx) {
    String number = Integer.toString(peg.number());
    Label label = label(number, at(peg), sizePx, sizePx, "words");
    double besideX = TextWidth.ofPx(number, sizePx) / 2 + BESIDE_PX;
    List<Point> places = new ArrayList<>(around(at(peg), sizePx, sizePx));
    for (double x : new double[] {-besideX, besideX}) {
      for (double y : new double[] {0, -0.6 * sizePx, 0.6 * sizePx}) {
        places.add(new Point(at(peg).x() + x, at(peg).y() + 0.3 * sizePx + y));
      }
    }
    places.removeIf(
        place -> !names.isOffShapes(label.at(place).box()) || !isOwn(peg, place, sizePx));
    return labels.place(label, places);
  }

  /** Whether they are few, or all numbers but a few have room beside their corners. */
  private boolean isRoomy() {
    if (all.size() <= FEW) {
      return true;
    }
    LabelPlaces tried = labels.copy();
    long away =
        all.stream()
            .filter(
                peg -> {
                  String number = Integer.toString(peg.number());
                  return tried
                      .place(label(number, at(peg), typePx, AWAY_PX, "words"), besideOwn(peg))
                      .isEmpty();
                })
            .count();
    return away <= MOST_AWAY;
  }

  /**
   * Words beside a mark, off the lines through it and away from the middle of the lawn where there
   * is room; else with a line.
   */
  void beside(String words, Point mark, String cssClass) {
    labels
        .place(label(words, mark, typePx, AWAY_PX, cssClass), around(mark, typePx, AWAY_PX))
        .ifPresentOrElse(svg::words, () -> names.withLine(words, List.of(mark), cssClass));
  }

  private Label label(String words, Point mark, double sizePx, double awayPx, String cssClass) {
    Point first = around(mark, sizePx, awayPx).get(0);
    return new Label(first, Label.Align.MIDDLE, sizePx, cssClass, words);
  }

  private List<Point> around(Point mark, double sizePx, double awayPx) {
    double outX = sign(mark.x() - view.size().width() / 2);
    double outY = sign(mark.y() - view.size().height() / 2);
    double base = mark.y() + 0.3 * sizePx;
    List<Point> places = new ArrayList<>();
    for (double[] step :
        new double[][] {
          {outX, outY},
          {outX, -outY},
          {-outX, outY},
          {0, outY},
          {outX, 0},
          {0, -outY},
          {-outX, 0},
          {-outX, -outY}
        }) {
      places.add(new Point(mark.x() + awayPx * step[0], base + awayPx * step[1]));
    }
    return places;
  }

  /** Never 0: in the very middle either way is outwards. */
  private static double sign(double px) {
    return px < 0 ? -1 : 1;
  }

  private Point at(Peg peg) {
    return view.point(peg.at().xM(), peg.at().yM());
  }
}
