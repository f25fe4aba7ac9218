package leafturn.web;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leafturn.advice.season.PlanAim;
import leafturn.advice.season.PlannedProgramme;
import leafturn.advice.season.PlannedProgramme.Origin;
import leafturn.advice.season.Ranking;
import leafturn.advice.season.SeasonPlan;
import leafturn.reports.DayWords;
import leafturn.reports.UnitWords;
import leafturn.reports.figure.TradeFigure;
import leafturn.reports.plan.AimWords;
import leafturn.reports.plan.BasisWords;
import leafturn.reports.plan.PlanFigure;
import leafturn.reports.plan.ProgrammeWarnings;
import leafturn.reports.plan.ProgrammeWords;
import leafturn.reports.plan.TradeWords;
import leafturn.web.sheet.NoteWords;

/** A season plan that is made, looked at with some weights. */
public final class SeasonAnswer {
  private static final int UNBEATEN_SHOWN = 6;

  /** A choice of a list. */
  public record Option(String value, String words, boolean taken) {}

  /** An aim with the weights it may have. */
  public record Weight(String name, String words, List<Option> options) {}

  /**
   * A programme in the tables and lists.
   *
   * @param name its name with what it does
   * @param brief its name alone
   */
  public record Row(
      int number, String name, String brief, Origin origin, boolean best, boolean unbeaten) {
    /** Whether it is how the lawn is kept now. */
    public boolean now() {
      return origin == Origin.PRESENT;
    }

    /** Its number where a search made its name, which stands elsewhere and is long. */
    public String title() {
      return origin == Origin.SEARCH ? "Number " + number : brief;
    }
  }

  /**
   * A table.
   *
   * @param named true where the rows bear the names of the programmes, not their numbers alone
   */
  public record Table(String heading, boolean named, List<PlanFigure> figures) {}

  private final SeasonPlan plan;
  private final Ranking ranking;
  private final TradeWords trade;
  private final AimWords aims;
  private final ProgrammeWords programmes;
  private final List<String> notes;
  private final String day;
  private final PlanWeights look;
  private final UnitWords units;

  SeasonAnswer(PlanJob.Made made, PlanWeights look, UnitWords units) {
    this.plan = made.plan();
    this.notes = made.subject().notes();
    this.day = DayWords.dayAndYear(made.day());
    this.look = look;
    this.units = units;
    this.ranking = Ranking.of(plan, look.weights());
    this.trade = new TradeWords(plan, ranking, look.weights(), units);
    this.aims = new AimWords(units, plan.basis().third());
    this.programmes = new ProgrammeWords(units, plan.basis().third());
  }

  /** The day on which it was asked for. */
  public String day() {
    return day;
  }

  public String sentence() {
    return trade.answer();
  }

  public String now() {
    return trade.now();
  }

  /** What is to be said against programmes of one's own. */
  public List<String> warnings() {
    return ProgrammeWarnings.of(plan, units);
  }

  public List<String> againstNow() {
    return trade.againstNow();
  }

  public List<String> trades() {
    return trade.trades();
  }

  public List<String> basis() {
    List<String> sentences = new ArrayList<>(List.of(trade.weighed()));
    sentences.addAll(BasisWords.of(plan.basis()));
    sentences.addAll(plan.basis().notes());
    NoteWords words = new NoteWords(units.units());
    notes.forEach(note -> sentences.add(words.of(note)));
    return sentences;
  }

  /** What is wrong with the weights, which are the usual ones then; empty where nothing is. */
  public String weightsFault() {
    return look.fault();
  }

  public List<Weight> weights() {
    List<Weight> weights = new ArrayList<>();
    for (PlanAim aim : PlanAim.values()) {
      List<Option> options = new ArrayList<>();
      for (int choice : PlanWeights.CHOICES) {
        options.add(
            new Option(
                Integer.toString(choice),
                choice == 0 ? "not at all" : Integer.toString(choice),
                look.typed(aim, choice)));
      }
      weights.add(new Weight(aim.id(), ProgrammeWords.capital(aims.wish(aim)), options));
    }
    return weights;
  }

  /** The aims that the figure may have along one of its sides. */
  public List<Option> axes(boolean across) {
    PlanAim taken = across ? look.across() : look.up();
    List<Option> options = new ArrayList<>();
    for (PlanAim aim : PlanAim.values()) {
      options.add(new Option(aim.id(), ProgrammeWords.capital(aims.measure(aim)), aim == taken));
    }
    return options;
  }

  public String figure(boolean wide) {
    return new TradeFigure(plan, ranking, units)
        .draw(look.across(), look.up(), shownNumbers(), wide);
  }

  public String figureWords() {
    return "Across: %s. Up: %s. Each dot is a programme: small full ones are unbeaten, small hollow ones beaten; large ones bear their number in the tables, the full one is nearest to your aims, and the square is now."
        .formatted(aims.measure(look.across()), aims.measure(look.up()));
  }

  private Set<Integer> shownNumbers() {
    Set<Integer> shown = new LinkedHashSet<>();
    shown.add(ranking.best());
    shown.add(0);
    for (Ranking.Place place : ranking.places()) {
      if (plan.programmes().get(place.number()).planned().origin() == Origin.GIVEN) {
        shown.add(place.number());
      }
    }
    ranking.unbeatenByDistance().stream().limit(UNBEATEN_SHOWN).forEach(shown::add);
    return shown;
  }

  /** The programmes of the tables, the one nearest to the aims first. */
  public List<Row> shown() {
    return shownNumbers().stream().map(this::row).toList();
  }

  /** All unbeaten programmes, those nearest to the aims first. */
  public List<Row> unbeaten() {
    return ranking.unbeatenByDistance().stream().map(this::row).toList();
  }

  private Row row(int number) {
    PlannedProgramme planned = plan.programmes().get(number).planned();
    return new Row(
        number,
        programmes.told(planned),
        programmes.name(planned),
        planned.origin(),
        number == ranking.best(),
        ranking.places().get(number).unbeaten());
  }

  public List<Table> tables() {
    return List.of(
        new Table("Work in a year", true, PlanFigure.work(units)),
        new Table("Nutrients on an area in a year", false, PlanFigure.nutrients(units)),
        new Table(
            "Turf; mowings and leaf in a year",
            false,
            PlanFigure.turf(units, plan.basis().third())));
  }

  /** Quantities of the long list. */
  public List<PlanFigure> longList() {
    return PlanFigure.chosen(units, plan.basis().third());
  }

  public String words(PlanFigure figure, Row row) {
    return figure.words().apply(plan.programmes().get(row.number()).outcome()).middle();
  }

  public String range(PlanFigure figure, Row row) {
    return figure.words().apply(plan.programmes().get(row.number()).outcome()).range();
  }
}
