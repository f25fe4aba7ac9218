package leafturn.reports.trial;

import static leafturn.reports.paper.Paper.escaped;

import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import leafturn.quantity.DisplayNumber;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.trial.LayoutDoubts;
import leafturn.records.trial.TrialPlanText;
import leafturn.reports.TapeWords;
import leafturn.reports.figure.TrialMap;
import leafturn.reports.figure.TrialMapFile;
import leafturn.reports.paper.Paper;
import leafturn.trials.design.Protocol;
import leafturn.trials.design.Treatments;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.design.layout.DroppedPlot;
import leafturn.trials.design.layout.LaidLawn;
import leafturn.trials.design.layout.LaidPlot;
import leafturn.trials.design.layout.TrialLayout;

/**
 * The layout on paper, for those who peg out and mow: it tells the treatments, so it is not for
 * those who rate.
 */
public final class LayoutPaper {
  /** Rows that the first sheet has room for; the sheet of each lawn lists its own plots. */
  private static final int MOST_IN_FRONT = 20;

  private final TrialLayout layout;
  private final Units units;
  private final TapeWords tapes;
  private final StringBuilder body = new StringBuilder();

  /** Paragraphs and items of the first sheet. */
  private final List<String> inFront = new ArrayList<>();

  private LayoutPaper(TrialLayout layout, Units units) {
    this.layout = layout;
    this.units = units;
    this.tapes = new TapeWords(units);
  }

  /** The document in a reader's units. */
  public static Paper of(TrialLayout layout, Units units) {
    LayoutPaper paper = new LayoutPaper(layout, units);
    paper.front();
    boolean listed = paper.plots() <= MOST_IN_FRONT;
    paper.lawn(layout.lawns().get(0), !listed);
    layout.lawns().stream().skip(1).forEach(lawn -> paper.lawn(lawn, false));
    return Paper.of(layout.plan().name() + ": layout", "", paper.body.toString());
  }

  private void front() {
    TrialPlan plan = layout.plan();
    body.append("<h1>").append(escaped(plan.name())).append("</h1>");
    paragraph(plan.question());
    paragraph("This paper tells the treatments. Keep it from those who rate the plots.");
    body.append("<h2>How the plots were drawn</h2>");
    paragraph(
        "Design %s, seed %d. The same plan and seed give this layout again."
            .formatted(plan.arrangement().design().word().replace('-', ' '), plan.seed()));
    LayoutDoubts.of(layout).forEach(this::paragraph);
    body.append("<p class=\"soft\">Plan ").append(TrialPlanText.sha256(plan)).append("</p>");
    body.append("<h2>What is kept the same</h2><ul>");
    protocol(plan.protocol());
    body.append("</ul>");
    List<List<String>> rows =
        layout.lawns().stream()
            .flatMap(lawn -> lawn.plots().stream().map(plot -> plotRow(lawn, plot)))
            .toList();
    if (rows.size() <= MOST_IN_FRONT) {
      body.append("<h2>Plots</h2>").append(PaperTable.of(plotColumns(), rows));
    }
  }

  private int plots() {
    return layout.lawns().stream().mapToInt(lawn -> lawn.plots().size()).sum();
  }

  private List<String> plotColumns() {
    return List.of("Plot", "Lawn", "Where", "Treatment", "Area, " + tapes.areaUnit());
  }

  private List<String> plotRow(LaidLawn lawn, LaidPlot plot) {
    return List.of(
        plot.code(),
        lawn.lawn().name(),
        plot.where(),
        plot.unit().treatment(),
        tapes.area(plot.place().plot().getArea()));
  }

  private void protocol(Protocol protocol) {
    if (protocol.mowingDay() != null) {
      String day = protocol.mowingDay().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
      item("Mowing day: %s.".formatted(day));
    }
    if (protocol.heightMm() != null) {
      item(
          "Cut height on all plots: %s %s."
              .formatted(
                  Measure.HEIGHT.typed(protocol.heightMm(), units),
                  Measure.HEIGHT.unit(units).symbol()));
    }
    if (protocol.bothHalvesSameDay()) {
      item("All plots of a block are mown on the same day.");
    }
    if (protocol.collectedFirst()) {
      item("Plots where clippings are collected are mown first.");
    }
    if (protocol.deckCleaned()) {
      item("The deck is cleaned and the bag emptied between plots: engine off, key or lead out.");
    }
    item(fed(protocol));
    layout.plan().observing().exclusions().forEach(this::item);
  }

  /** Alike, unless a treatment of either factor is a share of the feed. */
  private String fed(Protocol protocol) {
    Treatments treatments = layout.plan().treatments();
    List<String> shares =
        Stream.concat(treatments.arms().stream(), treatments.secondArms().stream())
            .filter(arm -> arm.feedShare() != 1)
            .map(arm -> "'%s' %s".formatted(arm.name(), share(arm.feedShare())))
            .toList();
    if (shares.isEmpty()) {
      return protocol.feed() == Protocol.Feed.EQUAL
          ? "All plots are fed alike."
          : "Plots are fed by their treatment's share of the usual feed.";
    }
    return "Plots are fed by their treatment's share of the usual feed: %s; all others the usual."
        .formatted(String.join(", ", shares));
  }

  private static String share(double share) {
    return share == 0 ? "none" : DisplayNumber.plain(share) + " times the usual";
  }

  /**
   * A lawn on a sheet of its own; one that takes several begins on the first sheet where there is
   * room for its map.
   *
   * @param mayBeginInFront whether it may begin there
   */
  private void lawn(LaidLawn lawn, boolean mayBeginInFront) {
    List<String> notes = lawn.notes().stream().map(tapes::sentence).toList();
    map(lawn, notes, mayBeginInFront);
    notes.forEach(this::paragraph);
    body.append("<h3>Plots</h3>");
    body.append(
        PaperTable.of(
            plotColumns(), lawn.plots().stream().map(plot -> plotRow(lawn, plot)).toList()));
    dropped(lawn.dropped());
    body.append("<h3>Corners, with two tapes from A and B</h3>");
    body.append(
        PaperTable.of(
            List.of(
                "Corner",
                "Of plots",
                "From A, " + tapes.distanceUnit(),
                "From B, " + tapes.distanceUnit(),
                "Side, looking from A to B"),
            lawn.pegs().stream()
                .map(
                    peg ->
                        List.of(
                            Integer.toString(peg.number()),
                            String.join(", ", peg.plots()),
                            tapes.distance(peg.at().fromAM()),
                            tapes.distance(peg.at().fromBM()),
                            peg.at().side()))
                .toList()));
    body.append("</div>");
  }

  private void map(LaidLawn lawn, List<String> notes, boolean mayBeginInFront) {
    TrialMap.Look look = new TrialMap.Look(layout.plan().treatments().names(), List.of(), units);
    double ownPx =
        SheetRoom.titled()
            .paragraphs(notes)
            .table(lawn.plots().size())
            .table(lawn.dropped().size())
            .table(lawn.pegs().size())
            .leftPx();
    double frontPx = SheetRoom.titled().paragraphs(inFront).heads(3).leftPx();
    boolean begins =
        mayBeginInFront
            && !TrialMapFile.hasRoom(lawn, ownPx)
            && TrialMapFile.hasRoom(lawn, frontPx);
    body.append(begins ? "<div><h2>" : "<div class=\"new-sheet\"><h2>")
        .append(escaped(lawn.lawn().name()))
        .append("</h2><figure>")
        .append(TrialMapFile.alone(lawn, look, begins ? frontPx : ownPx))
        .append("</figure>");
  }

  private void dropped(List<DroppedPlot> plots) {
    if (plots.isEmpty()) {
      return;
    }
    body.append("<h3>Dropped plots</h3>");
    body.append(
        PaperTable.of(
            List.of(
                "Mark",
                "Next to",
                "Its middle from A, " + tapes.distanceUnit(),
                "From B, " + tapes.distanceUnit(),
                "Side",
                "Why"),
            plots.stream()
                .map(
                    plot ->
                        List.of(
                            plot.mark(),
                            plot.beside(),
                            tapes.distance(plot.middle().fromAM()),
                            tapes.distance(plot.middle().fromBM()),
                            plot.middle().side(),
                            plot.why()))
                .toList()));
  }

  private void paragraph(String words) {
    inFront.add(words);
    body.append("<p>").append(escaped(words)).append("</p>");
  }

  private void item(String words) {
    inFront.add(words);
    body.append("<li>").append(escaped(words)).append("</li>");
  }
}
