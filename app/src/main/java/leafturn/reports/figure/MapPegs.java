package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leafturn.trials.design.layout.LaidLawn;
import leafturn.trials.design.layout.LaidPlot;
import leafturn.trials.design.layout.Peg;

/**
 * Corners of plots on a map, with their numbers: all of them where they find room beside their
 * corners, else those at the corners of blocks alone. The table has all.
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

  /** From a corner to a number level with it: the corner's half and air. */
  private static final double BESIDE_PX = 5.5;

  private final OutlineView view;
  private final Svg svg;
  private final LabelPlaces labels;
  private final MapLabels names;
  private final double typePx;
  private final List<Peg> all;
  private final List<Peg> ofBlocks;

  MapPegs(LaidLawn lawn, OutlineView view, Svg svg, LabelPlaces labels, MapLabels names) {
    this.view = view;
    this.svg = svg;
    this.labels = labels;
    this.names = names;
    this.typePx = names.typePx();
    this.all = lawn.pegs();
    Map<String, Integer> blocks = new HashMap<>();
    for (LaidPlot plot : lawn.plots()) {
      blocks.put(plot.code(), plot.unit().block());
    }
    this.ofBlocks = all.stream().filter(peg -> isOfBlock(peg, blocks)).toList();
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
      all.forEach(peg -> beside(Integer.toString(peg.number()), at(peg), "words"));
      return;
    }
    for (Peg peg : ofBlocks) {
      offPlots(peg, SMALL_TYPE_PX).or(() -> offPlots(peg, SMALLEST_TYPE_PX)).ifPresent(svg::words);
    }
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
    places.removeIf(place -> !names.isOffShapes(label.at(place).box()));
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
                      .place(
                          label(number, at(peg), typePx, AWAY_PX, "words"),
                          around(at(peg), typePx, AWAY_PX))
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
    double outX = Math.signum(mark.x() - view.size().width() / 2);
    double outY = Math.signum(mark.y() - view.size().height() / 2);
    double base = mark.y() + 0.3 * sizePx;
    List<Point> places = new ArrayList<>();
    for (double[] step :
        new double[][] {
          {outX, outY}, {outX, -outY}, {-outX, outY}, {0, outY}, {outX, 0}, {0, -outY}, {-outX, 0}
        }) {
      places.add(new Point(mark.x() + awayPx * step[0], base + awayPx * step[1]));
    }
    return places;
  }

  private Point at(Peg peg) {
    return view.point(peg.at().xM(), peg.at().yM());
  }
}
