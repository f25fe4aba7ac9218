package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.Units;
import leafturn.records.SourceText;
import leafturn.reports.TapeWords;
import leafturn.trials.design.layout.DroppedPlot;
import leafturn.trials.design.layout.LaidLawn;
import leafturn.trials.design.layout.TrialLayout;

/** Maps of a trial that need no page around them: one lawn, or all under each other in one file. */
public final class TrialMapFile {
  private static final String STYLE =
      SourceText.ofResource("/leafturn/reports/figure/trial-map.css").text();
  private static final double LINE_PX = 19;
  private static final double HEAD_PX = 34;
  private static final double MARGIN_PX = 12;
  private static final double TYPE_PX = 14;
  private static final double LEAST_SHEET_PX = 300;

  private TrialMapFile() {}

  /**
   * The map of one lawn with its styles, for a document on paper.
   *
   * @param roomPx what the sheet has for it; where that is too little, the map has its full size
   *     and what stands with it goes on to the next sheet
   */
  public static String alone(LaidLawn lawn, TrialMap.Look look, double roomPx) {
    double full = fullPx(lawn);
    double most = !hasRoom(lawn, roomPx) ? full : Math.min(full, roomPx);
    return standing(TrialMap.draw(lawn, OutlineFormat.SHEET, most, look));
  }

  /** The usual height, or a whole sheet for plots that would be too thin for their codes. */
  private static double fullPx(LaidLawn lawn) {
    return TrialMap.heightPx(lawn, OutlineFormat.SHEET);
  }

  /** Whether a sheet has room enough for the map of a lawn. */
  public static boolean hasRoom(LaidLawn lawn, double roomPx) {
    return roomPx >= LEAST_SHEET_PX
        && (roomPx >= fullPx(lawn) || TrialMap.isReadable(lawn, OutlineFormat.SHEET, roomPx));
  }

  /** Whether the codes of plots can be read on one of several small maps on a sheet. */
  public static boolean isReadableSmall(LaidLawn lawn, int beside) {
    OutlineFormat format = beside > 2 ? OutlineFormat.THIRD_SHEET : OutlineFormat.HALF_SHEET;
    return TrialMap.isReadable(lawn, format, format.mostHeightPx);
  }

  /** The same without cores, as one of several beside each other on a sheet: two, or three. */
  public static String small(LaidLawn lawn, TrialMap.Look look, int beside) {
    OutlineFormat format = beside > 2 ? OutlineFormat.THIRD_SHEET : OutlineFormat.HALF_SHEET;
    return standing(TrialMap.draw(lawn, format, look));
  }

  private static String standing(String svg) {
    int end = svg.indexOf('>');
    return "<svg xmlns=\"http://www.w3.org/2000/svg\""
        + svg.substring("<svg".length(), end + 1)
        + "<style>"
        + STYLE
        + "</style>"
        + svg.substring(end + 1);
  }

  /** All lawns under each other, each with its pegs in words and the reader's units. */
  public static String of(TrialLayout layout, Units units) {
    List<String> arms = layout.plan().treatments().names();
    TrialMap.Look look = new TrialMap.Look(arms, List.of(), units);
    StringBuilder parts = new StringBuilder();
    double top = 0;
    for (LaidLawn lawn : layout.lawns()) {
      List<String> words = words(lawn, new TapeWords(units));
      String map = TrialMap.draw(lawn, OutlineFormat.WIDE, look);
      double mapPx = heightOf(map);
      parts.append(line(lawn.lawn().name(), "lawn-name", top + HEAD_PX - MARGIN_PX));
      parts.append("<g transform=\"translate(0 ").append(whole(top + HEAD_PX)).append(")\">");
      parts.append(map).append("</g>");
      double y = top + HEAD_PX + mapPx + LINE_PX;
      for (String each : words) {
        parts.append(line(each, "words", y));
        y += LINE_PX;
      }
      top = y + LINE_PX;
    }
    Box size = new Box(0, 0, OutlineFormat.WIDE.widthPx, Math.ceil(top));
    String opened =
        Svg.labelled(size, "trial-maps", "Maps of the trial " + layout.plan().name()).close();
    return standing(opened.replace("</svg>", parts + "</svg>")) + "\n";
  }

  private static List<String> words(LaidLawn lawn, TapeWords tapes) {
    List<String> words = new ArrayList<>();
    lawn.plots()
        .forEach(
            plot ->
                words.add(
                    "%s: %s, %s".formatted(plot.code(), plot.unit().treatment(), plot.where())));
    for (DroppedPlot dropped : lawn.dropped()) {
      words.add("Dropped: " + tapes.dropped(dropped) + ":");
      words.add(dropped.why() + ".");
    }
    lawn.pegs()
        .forEach(peg -> words.add("Peg %d: %s".formatted(peg.number(), tapes.place(peg.at()))));
    return words;
  }

  private static String line(String words, String cssClass, double y) {
    Label label = new Label(new Point(MARGIN_PX, y), Label.Align.START, TYPE_PX, cssClass, words);
    return Svg.part(label);
  }

  private static String whole(double px) {
    return Long.toString(Math.round(px));
  }

  private static double heightOf(String svg) {
    String mark = " height=\"";
    int from = svg.indexOf(mark) + mark.length();
    return Double.parseDouble(svg.substring(from, svg.indexOf('"', from)));
  }
}
