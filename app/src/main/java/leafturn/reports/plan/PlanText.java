package leafturn.reports.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leafturn.advice.call.Spread;
import leafturn.advice.season.AimWeights;
import leafturn.advice.season.PlannedProgramme.Origin;
import leafturn.advice.season.ProgrammeOutcome;
import leafturn.advice.season.Ranking;
import leafturn.advice.season.SeasonPlan;
import leafturn.quantity.Units;
import leafturn.records.ProgrammeDocument;
import leafturn.reports.JsonReport;
import leafturn.reports.Paragraph;
import leafturn.reports.QuantityWords;
import leafturn.reports.TextTable;
import leafturn.reports.UnitWords;

/** A plan as lines for a terminal. */
public final class PlanText {
  private static final int UNBEATEN_SHOWN = 8;
  private static final int WIDEST_TABLE = 100;
  private static final UnitWords UNITS = new UnitWords(Units.METRIC);

  private final SeasonPlan plan;
  private final Ranking ranking;
  private final AimWeights weights;
  private final List<String> lines = new ArrayList<>();

  private PlanText(SeasonPlan plan, Ranking ranking, AimWeights weights) {
    this.plan = plan;
    this.ranking = ranking;
    this.weights = weights;
  }

  /**
   * The lines.
   *
   * @param notes what was assumed or filled in
   * @param adopt number of the programme whose fields are printed
   */
  public static List<String> of(
      SeasonPlan plan, Ranking ranking, AimWeights weights, List<String> notes, int adopt) {
    return new PlanText(plan, ranking, weights).lines(notes, adopt);
  }

  private List<String> lines(List<String> notes, int adopt) {
    TradeWords trade = new TradeWords(plan, ranking, weights, UNITS);
    paragraph(trade.answer());
    ProgrammeWarnings.of(plan, UNITS).forEach(this::paragraph);
    paragraph(trade.now());
    trade.againstNow().forEach(this::paragraph);
    lines.add("");
    names();
    lines.add("");
    table();
    lines.add("");
    trade.trades().forEach(this::paragraph);
    lines.add("");
    paragraph(trade.weighed());
    BasisWords.of(plan.basis()).forEach(this::paragraph);
    List<String> all = new ArrayList<>(notes);
    all.addAll(plan.basis().notes());
    all.forEach(this::paragraph);
    lines.add("");
    paragraph(
        "To adopt number %d (another with --adopt NUMBER), put these fields into the lawn description:"
            .formatted(adopt));
    JsonReport.of(ProgrammeDocument.of(plan.programmes().get(adopt).planned().programme()))
        .lines()
        .forEach(lines::add);
    return lines.stream().map(Paragraph::plain).toList();
  }

  private void paragraph(String sentence) {
    lines.addAll(Paragraph.of("", sentence));
  }

  /** Numbers of the programmes shown: now, those given, and the unbeaten ones nearest the aims. */
  private Set<Integer> shown() {
    Set<Integer> shown = new LinkedHashSet<>();
    for (Ranking.Place place : ranking.places()) {
      if (plan.programmes().get(place.number()).planned().origin() != Origin.SEARCH) {
        shown.add(place.number());
      }
    }
    ranking.unbeatenByDistance().stream().limit(UNBEATEN_SHOWN).forEach(shown::add);
    return shown;
  }

  private void names() {
    ProgrammeWords words = new ProgrammeWords(UNITS, plan.basis().third());
    for (int number : shown()) {
      String beaten = ranking.places().get(number).unbeaten() ? "" : " (beaten)";
      String nearest = number == ranking.best() ? "  <- nearest to the aims" : "";
      String name = words.told(plan.programmes().get(number).planned());
      lines.addAll(Paragraph.of("%4d  ".formatted(number), name + beaten + nearest, WIDEST_TABLE));
    }
  }

  private void table() {
    TextTable table =
        new TextTable(
            "No.",
            "mowings",
            "hours",
            "litres",
            "water",
            "N kept",
            "N needed",
            "nitrate",
            "thatch",
            "clumps",
            "over " + plan.basis().third(),
            "growth");
    for (int number : shown()) {
      ProgrammeOutcome outcome = plan.programmes().get(number).outcome();
      table.row(cells(number, outcome));
    }
    lines.addAll(table.lines(WIDEST_TABLE));
    paragraph(
        "Medians of a year; --json gives the ranges. Litres carried away per m2, water given in mm, N kept, N needed for growth as now and nitrate lost in g N/m2, thatch after 5 years in mm, growth in g dry leaf/m2.");
  }

  /** Each number with the digits that the page and the sentences above give it. */
  private static String[] cells(int number, ProgrammeOutcome outcome) {
    var hours = outcome.work().hours();
    var needed = outcome.feed().equalGrowthNGPerM2();
    return new String[] {
      Integer.toString(number),
      QuantityWords.whole(outcome.mowings().middle(), ""),
      hours == null ? "-" : number(hours),
      number(outcome.work().collectedLitresPerM2()),
      QuantityWords.whole(outcome.irrigationMm().middle(), ""),
      number(outcome.kept().nGPerM2()),
      needed == null
          ? "> " + QuantityWords.plain(ProgrammeOutcome.MOST_FEED_G_PER_M2)
          : number(needed),
      number(outcome.leachedNGPerM2()),
      number(outcome.thatch().after5YearsMm()),
      QuantityWords.whole(outcome.risks().clumpMowings().middle(), ""),
      QuantityWords.percent(outcome.risks().thirdRuleBrokenFraction().middle()),
      number(outcome.growthGPerM2())
    };
  }

  private static String number(Spread spread) {
    return QuantityWords.quantity(spread, "").middle();
  }
}
