package leafturn.reports.trial;

import static leafturn.reports.paper.Paper.escaped;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import leafturn.quantity.Units;
import leafturn.records.Numbers;
import leafturn.reports.figure.TrialMap;
import leafturn.reports.figure.TrialMapFile;
import leafturn.reports.paper.Paper;
import leafturn.trials.design.CoreRule;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.layout.Bag;
import leafturn.trials.design.layout.Core;
import leafturn.trials.design.layout.LaidLawn;
import leafturn.trials.design.layout.Stop;
import leafturn.trials.design.layout.TrialLayout;

/**
 * Sheets to fill in at the lawn, one for each date, in walking order. They name plots and never
 * treatments, so that whoever rates does not know them.
 */
public final class FieldSheets {
  private final TrialLayout layout;
  private final StringBuilder body = new StringBuilder();

  private FieldSheets(TrialLayout layout) {
    this.layout = layout;
  }

  /** The document. */
  public static Paper of(TrialLayout layout) {
    FieldSheets sheets = new FieldSheets(layout);
    sheets.front();
    layout.plan().observing().dates().forEach(sheets::date);
    layout.plan().observing().cores().dates().forEach(sheets::cores);
    return Paper.of(
        layout.plan().name() + ": field sheets",
        "td.blank { border-left: 0.3pt solid #8f8a7b; } table.field td { padding: 2.2mm 2mm; }",
        sheets.body.toString());
  }

  private void front() {
    body.append("<h1>").append(escaped(layout.plan().name())).append(": field sheets</h1>");
    body.append(
        "<p>One sheet for each date, in the order of the walk. Take the plots of a block in the"
            + " order given, one after the other, by the same person in the same hour. Rate before"
            + " you ask anybody what was done where.</p>");
    body.append(
        "<p>What spoils an observation, written down before its treatment is known:</p><ul>");
    for (String rule : layout.plan().observing().exclusions()) {
      body.append("<li>").append(escaped(rule)).append("</li>");
    }
    body.append(
        "<li>Anything unusual (dog, spill, spreader overlap, sprinkler): note place, size"
            + " and plot.</li></ul>");
  }

  private List<Outcome> seen() {
    return layout.plan().observing().outcomes().stream()
        .filter(
            outcome ->
                outcome.kind() == Outcome.Kind.RATING || outcome.kind() == Outcome.Kind.MEASUREMENT)
        .toList();
  }

  private void date(LocalDate date) {
    body.append("<div class=\"new-sheet\"><h2>").append(date).append("</h2>");
    body.append(
        "<p>Rater: ____________________ &#160; From: ________ to: ________ &#160;"
            + " Sky: ____________________</p>");
    body.append("<table class=\"field\"><thead><tr><th>Lawn</th><th>Block</th><th>Plot</th>");
    for (Outcome outcome : seen()) {
      body.append("<th>")
          .append(escaped("%s (%s)".formatted(outcome.name(), outcome.unit())))
          .append("</th>");
    }
    body.append("<th>Note</th></tr></thead><tbody>");
    for (Stop stop : layout.walk()) {
      if (stop.date().equals(date)) {
        stop.plots().forEach(plot -> row(stop, plot));
      }
    }
    body.append("</tbody></table></div>");
  }

  private void row(Stop stop, String plot) {
    String lawn = layout.lawns().get(stop.lawn()).lawn().name();
    body.append("<tr><td>").append(escaped(lawn)).append("</td><td>").append(stop.block());
    body.append("</td><td><b>").append(plot).append("</b></td>");
    body.append("<td class=\"blank\">&#160;</td>".repeat(seen().size() + 1)).append("</tr>");
  }

  private void cores(LocalDate date) {
    CoreRule rule = layout.plan().observing().cores();
    body.append("<div class=\"new-sheet\"><h2>Cores on ").append(date).append("</h2>");
    body.append(
        paragraph(
            ("%d cores of %s cm from each plot, each as near to its dot as the ground allows. Check"
                    + " before you push: no pipe, cable or irrigation line lies there. Dots go into"
                    + " bag 1, rings into the other bags, as the table says.")
                .formatted(rule.perPlot(), Numbers.plain(rule.depthCm()))));
    if (layout.bags().stream().anyMatch(bag -> bag.duplicateOf() != null)) {
      body.append(
          paragraph(
              "Some bags are divided: mix the soil of the bag well, put half of it into a second"
                  + " bag with the second code, and send both. The laboratory must not know which"
                  + " bags belong together, so this sheet does not go with them."));
    }
    for (LaidLawn lawn : layout.lawns()) {
      lawnCores(date, lawn);
    }
    body.append("</div>");
  }

  private void lawnCores(LocalDate date, LaidLawn lawn) {
    List<String> codes = lawn.plots().stream().map(plot -> plot.code()).toList();
    List<Core> cores =
        layout.cores().stream()
            .filter(core -> core.date().equals(date) && codes.contains(core.plot()))
            .toList();
    body.append("<h3>").append(escaped(lawn.lawn().name())).append("</h3><figure>");
    TrialMap.Look look = new TrialMap.Look(List.of(), cores, Units.METRIC);
    body.append(TrialMapFile.alone(lawn, look)).append("</figure>");
    List<List<String>> rows = new ArrayList<>();
    for (Bag bag : layout.bags()) {
      if (bag.date().equals(date) && codes.contains(bag.plot())) {
        String numbers =
            cores.stream()
                .filter(core -> core.plot().equals(bag.plot()) && core.bag() == bag.number())
                .map(core -> Integer.toString(core.number()))
                .collect(Collectors.joining(", "));
        boolean half = bag.duplicateOf() != null;
        rows.add(
            List.of(
                bag.plot(),
                bag.number() + (half ? ", second half" : ""),
                bag.code(),
                half ? "half of the soil of " + bag.duplicateOf() : numbers));
      }
    }
    body.append(PaperTable.of(List.of("Plot", "Bag", "Code on the label", "Cores"), rows));
  }

  private static String paragraph(String words) {
    return "<p>" + escaped(words) + "</p>";
  }

  /** The labels of all bags, in an order that tells nothing. */
  public static Paper labels(TrialLayout layout) {
    StringBuilder body = new StringBuilder();
    for (LocalDate date : layout.plan().observing().cores().dates()) {
      List<String> codes =
          new ArrayList<>(
              layout.bags().stream()
                  .filter(bag -> bag.date().equals(date))
                  .map(Bag::code)
                  .toList());
      Collections.sort(codes);
      body.append(SampleLabels.of(layout.plan().name(), date, codes));
    }
    return Paper.of(layout.plan().name() + ": labels", SampleLabels.STYLE, body.toString());
  }
}
