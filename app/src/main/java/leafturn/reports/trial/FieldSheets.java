package leafturn.reports.trial;

import static leafturn.reports.paper.Paper.escaped;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import leafturn.quantity.DisplayNumber;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.Dates;
import leafturn.reports.figure.TrialMap;
import leafturn.reports.figure.TrialMapFile;
import leafturn.reports.paper.Paper;
import leafturn.trials.design.CoreRule;
import leafturn.trials.design.Observing;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.layout.Bag;
import leafturn.trials.design.layout.Core;
import leafturn.trials.design.layout.LaidLawn;
import leafturn.trials.design.layout.LaidPlot;
import leafturn.trials.design.layout.Stop;
import leafturn.trials.design.layout.TrialLayout;

/**
 * Sheets to fill in at the lawn, one for each date, in walking order: they ask for what the
 * outcomes of the plan need and for nothing else. They name plots and never treatments, so that
 * whoever rates does not know them.
 */
public final class FieldSheets {
  private static final String LINE = "____________________";
  private static final int MOST_BESIDE = 3;
  private static final double READABLE_PX = 300;

  private final TrialLayout layout;
  private final Observing observing;
  private final Units units;
  private final StringBuilder body = new StringBuilder();
  private boolean begun;

  private FieldSheets(TrialLayout layout, Units units) {
    this.layout = layout;
    this.observing = layout.plan().observing();
    this.units = units;
  }

  /** The document in a reader's units. */
  public static Paper of(TrialLayout layout, Units units) {
    FieldSheets sheets = new FieldSheets(layout, units);
    sheets.front();
    if (sheets.isWalked() && !sheets.haveMapsOnEachDate()) {
      sheets.maps();
      sheets.begun = true;
    }
    if (sheets.isWalked()) {
      layout.plan().observing().dates().forEach(sheets::date);
    }
    sheets.coreDates().forEach(sheets::cores);
    return Paper.of(
        layout.plan().name() + ": field sheets",
        "td.blank { border-left: 0.3pt solid #8f8a7b; } table.field td { padding: 2.2mm 2mm; }"
            + " table.maps td { border: 0; padding: 0 2mm 1mm 0; }"
            + " table.maps p { margin: 0; } .together { page-break-inside: avoid; }",
        sheets.body.toString());
  }

  /** Whether the plots are walked for anything but cores. */
  private boolean isWalked() {
    return !seen().isEmpty() || observing.has(Outcome.Kind.TISSUE);
  }

  private List<Outcome> seen() {
    return observing.outcomes().stream()
        .filter(
            outcome ->
                outcome.kind() == Outcome.Kind.RATING || outcome.kind() == Outcome.Kind.MEASUREMENT)
        .toList();
  }

  private void front() {
    body.append("<h1>").append(escaped(layout.plan().name())).append(": field sheets</h1>");
    if (isWalked()) {
      body.append(
          paragraph(
              "One sheet for each date, in the order of the walk. Take the plots of a block in the"
                  + " order given, one after the other, by the same person in the same hour."
                  + (observing.has(Outcome.Kind.RATING)
                      ? " Rate before you ask anybody what was done where."
                      : "")));
    }
    if (!coreDates().isEmpty()) {
      body.append(paragraph("One sheet for each date of cores, with a map of each lawn."));
    }
    body.append(
        "<p>What spoils an observation, written down before its treatment is known:</p><ul>");
    for (String rule : observing.exclusions()) {
      body.append("<li>").append(escaped(rule)).append("</li>");
    }
    body.append(
        "<li>Anything unusual (dog, spill, spreader overlap, sprinkler): note place, size"
            + " and plot.</li></ul>");
  }

  private List<LocalDate> coreDates() {
    return layout.cores().isEmpty() ? List.of() : observing.cores().dates();
  }

  /** Begins a sheet; the first one stands below the front matter, where there is room for it. */
  private void sheet(String title) {
    body.append(begun ? "<div class=\"new-sheet\"><h2>" : "<div class=\"together\"><h2>")
        .append(title)
        .append("</h2>");
    begun = true;
  }

  private void date(LocalDate date) {
    boolean leaves = observing.has(Outcome.Kind.TISSUE);
    sheet(Dates.words(date));
    body.append("<p>").append(who()).append(": ").append(LINE);
    body.append(" &#160; From: ________ to: ________ &#160; Sky: ").append(LINE).append("</p>");
    if (leaves) {
      body.append(paragraph(LeafBags.HOW));
      divided(Outcome.Kind.TISSUE);
    }
    body.append("<table class=\"field\"><thead><tr><th>Lawn</th><th>Block</th><th>Plot</th>");
    for (Outcome outcome : seen()) {
      body.append("<th>")
          .append(escaped("%s (%s)".formatted(outcome.name(), outcome.unit())))
          .append("</th>");
    }
    body.append(leaves ? "<th>Bag of leaves</th>" : "");
    body.append("<th>Note</th></tr></thead><tbody>");
    for (Stop stop : layout.walk()) {
      if (stop.date().equals(date)) {
        stop.plots().forEach(plot -> row(stop, plot));
      }
    }
    body.append("</tbody></table>");
    if (haveMapsOnEachDate()) {
      maps();
    }
    body.append("</div>");
  }

  /** Whether the table of a date leaves room for the maps; else they stand once, in front. */
  private boolean haveMapsOnEachDate() {
    int rowsOfMaps = (layout.lawns().size() + beside() - 1) / beside();
    return layout.lawns().stream().allMatch(lawn -> TrialMapFile.isReadableSmall(lawn, beside()))
        && SheetRoom.titled()
            .paragraphs(
                observing.has(Outcome.Kind.TISSUE) ? List.of("", LeafBags.HOW) : List.of(""))
            .rowsToFillIn(layout.plots().size())
            .hasRoomFor(rowsOfMaps * (beside() > 2 ? 180 : 290));
  }

  private int beside() {
    return layout.lawns().size() > 2 ? MOST_BESIDE : 2;
  }

  /** Small maps without treatments, beside each other. */
  private void maps() {
    TrialMap.Look look = new TrialMap.Look(List.of(), List.of(), units);
    int beside = beside();
    List<LaidLawn> lawns =
        layout.lawns().stream().filter(lawn -> TrialMapFile.isReadableSmall(lawn, beside)).toList();
    layout.lawns().stream()
        .filter(lawn -> !lawns.contains(lawn))
        .forEach(lawn -> largeMap(lawn, look));
    if (lawns.isEmpty()) {
      return;
    }
    body.append("<div class=\"together\"><h3>Where the plots lie</h3>")
        .append("<table class=\"maps\"><tbody>");
    for (int i = 0; i < lawns.size(); i++) {
      body.append(i % beside == 0 ? "<tr><td>" : "<td>");
      body.append("<p>").append(escaped(lawns.get(i).lawn().name())).append("</p>");
      body.append(TrialMapFile.small(lawns.get(i), look, beside)).append("</td>");
      boolean last = i == lawns.size() - 1;
      body.append(last ? "<td></td>".repeat(beside - 1 - i % beside) : "")
          .append(last || i % beside == beside - 1 ? "</tr>" : "");
    }
    body.append("</tbody></table></div>");
  }

  /** On a sheet of its own: plots whose codes nobody could read on a small map. */
  private void largeMap(LaidLawn lawn, TrialMap.Look look) {
    body.append("<div class=\"new-sheet\"><h3>Where the plots of ")
        .append(escaped(lawn.lawn().name()))
        .append(" lie</h3><figure>")
        .append(TrialMapFile.alone(lawn, look, 0))
        .append("</figure></div>");
  }

  private String who() {
    return observing.has(Outcome.Kind.RATING)
        ? "Rater"
        : observing.has(Outcome.Kind.MEASUREMENT) ? "Measured by" : "Sampled by";
  }

  private void row(Stop stop, String plot) {
    String lawn = layout.lawns().get(stop.lawn()).lawn().name();
    body.append("<tr><td>").append(escaped(lawn)).append("</td><td>").append(stop.block());
    body.append("</td><td><b>").append(plot).append("</b></td>");
    body.append("<td class=\"blank\">&#160;</td>".repeat(seen().size()));
    if (observing.has(Outcome.Kind.TISSUE)) {
      body.append("<td>").append(LeafBags.of(layout, plot, stop.date())).append("</td>");
    }
    body.append("<td class=\"blank\">&#160;</td></tr>");
  }

  private void cores(LocalDate date) {
    CoreRule rule = observing.cores();
    sheet("Cores on " + Dates.words(date));
    body.append("<p>Taken by: ").append(LINE).append("</p>");
    body.append(
        paragraph(
            ("%s of %s %s from each plot, each as near to its dot as the ground allows. Check"
                    + " before you push: no pipe, cable or irrigation line lies there.%s")
                .formatted(
                    DisplayNumber.counted(rule.perPlot(), "core"),
                    Measure.DEPTH.typed(rule.depthCm(), units),
                    Measure.DEPTH.unit(units).symbol(),
                    rule.composites() == 1
                        ? ""
                        : " Dots go into bag 1, rings into the other bags, as the table says.")));
    divided(Outcome.Kind.SOIL);
    for (LaidLawn lawn : layout.lawns()) {
      lawnCores(date, lawn);
    }
    body.append("</div>");
  }

  private void divided(Outcome.Kind holds) {
    if (layout.bags().stream().anyMatch(bag -> bag.holds() == holds && bag.duplicateOf() != null)) {
      body.append(
          paragraph(
              "Some bags are divided: mix what is in the bag well, put half of it into a second bag"
                  + " with the second code, and send both. The laboratory must not know which bags"
                  + " belong together, so this sheet does not go with them."));
    }
  }

  private void lawnCores(LocalDate date, LaidLawn lawn) {
    List<String> codes = lawn.plots().stream().map(LaidPlot::code).toList();
    List<Core> cores =
        layout.cores().stream()
            .filter(core -> core.date().equals(date) && codes.contains(core.plot()))
            .toList();
    List<List<String>> rows = new ArrayList<>();
    for (Bag bag : layout.bags()) {
      if (bag.holds() == Outcome.Kind.SOIL
          && bag.date().equals(date)
          && codes.contains(bag.plot())) {
        rows.add(coreRow(bag, cores));
      }
    }
    SheetRoom room = SheetRoom.part().table(rows.size());
    double halfPx = layout.lawns().size() > 1 ? room.leftOfHalfPx() : 0;
    TrialMap.Look look = new TrialMap.Look(List.of(), cores, units);
    body.append("<div class=\"together\"><h3>").append(escaped(lawn.lawn().name()));
    body.append("</h3><figure>")
        .append(TrialMapFile.alone(lawn, look, halfPx >= READABLE_PX ? halfPx : room.leftPx()))
        .append("</figure>");
    body.append(PaperTable.of(List.of("Plot", "Bag", "Code on the label", "Cores"), rows))
        .append("</div>");
  }

  private static List<String> coreRow(Bag bag, List<Core> cores) {
    String numbers =
        cores.stream()
            .filter(core -> core.plot().equals(bag.plot()) && core.bag() == bag.number())
            .map(core -> Integer.toString(core.number()))
            .collect(Collectors.joining(", "));
    boolean half = bag.duplicateOf() != null;
    return List.of(
        bag.plot(),
        bag.number() + (half ? ", second half" : ""),
        bag.code(),
        half ? "half of the soil of " + bag.duplicateOf() : numbers);
  }

  private static String paragraph(String words) {
    return "<p>" + escaped(words) + "</p>";
  }
}
