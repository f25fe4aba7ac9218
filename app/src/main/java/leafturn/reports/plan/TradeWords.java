package leafturn.reports.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leafturn.advice.season.AimWeights;
import leafturn.advice.season.PlanAim;
import leafturn.advice.season.PlannedProgramme;
import leafturn.advice.season.ProgrammeOutcome;
import leafturn.advice.season.Ranking;
import leafturn.advice.season.SeasonPlan;
import leafturn.advice.season.SeasonPlan.Result;
import leafturn.quantity.DisplayNumber;
import leafturn.reports.UnitWords;

/** What is gained and what is given up between the programmes of a plan, in sentences. */
public final class TradeWords {
  /**
   * A change over this share of the larger value is told whatever its aim weighs; our judgement.
   */
  private static final double LARGE_FRACTION = 0.25;

  /** A change of water below this is not worth telling, mm a year; our judgement. */
  private static final double WATER_STEP_MM = 10;

  private final SeasonPlan plan;
  private final Ranking ranking;
  private final AimWeights weights;
  private final ProgrammeWords programmes;
  private final AimWords aims;
  private final UnitWords units;

  /**
   * @param units of the reader
   */
  public TradeWords(SeasonPlan plan, Ranking ranking, AimWeights weights, UnitWords units) {
    this.plan = plan;
    this.ranking = ranking;
    this.weights = weights;
    this.units = units;
    this.programmes = new ProgrammeWords(units, plan.basis().third());
    this.aims = new AimWords(units, plan.basis().third());
  }

  /** The answer in one sentence. */
  public String answer() {
    if (ranking.best() == 0) {
      return "By your aims nothing comes nearer than how the lawn is kept now.";
    }
    Result best = plan.programmes().get(ranking.best());
    String name = best.planned().name();
    return name.isEmpty()
        ? "By your aims: %s.".formatted(programmes.parts(best.planned().programme()))
        : "By your aims: %s, that is %s."
            .formatted(name, programmes.parts(best.planned().programme()));
  }

  /** What now is: how the lawn was kept when the plan was made. */
  public String now() {
    return "Now is: %s.".formatted(programmes.now(plan.present().planned().programme()));
  }

  /** How the aims are weighted. */
  public String weighed() {
    List<String> parts = new ArrayList<>();
    List<String> none = new ArrayList<>();
    for (PlanAim aim : PlanAim.values()) {
      double weight = weights.of(aim);
      if (weight > 0) {
        parts.add("%s %s".formatted(aims.wish(aim), DisplayNumber.plain(weight)));
      } else {
        none.add(aims.wish(aim));
      }
    }
    return "Aims as weighted: %s%s."
        .formatted(
            ProgrammeWords.joined(parts),
            none.isEmpty() ? "" : "; not at all: %s".formatted(ProgrammeWords.joined(none)));
  }

  /** What the programme nearest to the aims gains against now, and what it costs. */
  public List<String> againstNow() {
    return against(ranking.best());
  }

  /**
   * What a programme gains against now, and what it costs: by the aims that count and growth, and
   * by whatever else changes much.
   *
   * @param number of the programme in the plan
   */
  public List<String> against(int number) {
    Result other = plan.programmes().get(number);
    Result now = plan.present();
    List<String> gains = new ArrayList<>();
    List<String> costs = new ArrayList<>();
    for (PlanAim aim : told(other, now)) {
      int sign = aim.compare(other.outcome(), now.outcome(), now.outcome());
      String its = aims.figure(aim, other.outcome());
      String before = aims.figure(aim, now.outcome());
      String figures = "%s instead of %s".formatted(its, before);
      if (its.equals(before)) {
        continue;
      }
      if (sign < 0 && (weights.of(aim) > 0 || aim != PlanAim.GROWTH)) {
        gains.add("%s (%s)".formatted(aims.wish(aim), figures));
      } else if (sign > 0) {
        costs.add("%s (%s)".formatted(aims.cost(aim), figures));
      }
    }
    water(other.outcome().irrigationMm().middle(), now.outcome().irrigationMm().middle())
        .ifPresent(figures -> (figures.startsWith("less") ? gains : costs).add(figures));
    List<String> sentences = new ArrayList<>();
    if (!gains.isEmpty()) {
      sentences.add("Against now it gives " + ProgrammeWords.joined(gains) + ".");
    }
    if (!costs.isEmpty()) {
      sentences.add(
          (gains.isEmpty() ? "Against now it costs " : "It costs ")
              + ProgrammeWords.joined(costs)
              + ".");
    }
    return sentences;
  }

  /** Water is no aim of its own, and may change much all the same. */
  private Optional<String> water(double mm, double beforeMm) {
    return Math.abs(mm - beforeMm) >= WATER_STEP_MM && large(mm, beforeMm)
        ? Optional.of(
            "%s water (%s instead of %s)"
                .formatted(mm < beforeMm ? "less" : "more", given(mm), given(beforeMm)))
        : Optional.empty();
  }

  private String given(double mm) {
    return mm > 0 ? units.water(mm) : "none";
  }

  private static boolean large(double value, double before) {
    return Math.abs(value - before) > LARGE_FRACTION * Math.max(Math.abs(value), Math.abs(before));
  }

  private List<PlanAim> told(Result other, Result now) {
    List<PlanAim> told = chosenAndGrowth();
    for (PlanAim aim : PlanAim.values()) {
      if (!told.contains(aim) && large(value(aim, other), value(aim, now))) {
        told.add(aim);
      }
    }
    return told;
  }

  /** Grass that grows less is a price whatever somebody weighs. */
  private List<PlanAim> chosenAndGrowth() {
    List<PlanAim> aims = new ArrayList<>(weights.chosen());
    if (!aims.contains(PlanAim.GROWTH)) {
      aims.add(PlanAim.GROWTH);
    }
    return aims;
  }

  /** How many programmes nothing beats, and where each aim alone would lead. */
  public List<String> trades() {
    List<Integer> unbeaten = ranking.unbeatenByDistance();
    List<String> sentences = new ArrayList<>();
    sentences.add(unbeaten(plan.programmes().size(), unbeaten.size()));
    if (weights.chosen().size() == 1) {
      return sentences;
    }
    List<String> reached = new ArrayList<>();
    for (PlanAim aim : weights.chosen()) {
      int most = Ranking.alone(plan, aim).best();
      if (betters(aim, most)) {
        sentences.add(sentence(aim, most));
      } else {
        reached.add(aims.wish(aim));
      }
    }
    if (!reached.isEmpty()) {
      sentences.add(
          1,
          "None that keeps a lawn is better, by a difference that counts, than the one nearest your aims for "
              + ProgrammeWords.joined(reached)
              + ".");
    }
    sentences.add(
        "Each aim alone is decided by its numbers; between equals all aims decide, weighted as usual, and programmes mown fewer than %d times a year are left aside unless now is too."
            .formatted(ProgrammeOutcome.FEWEST_MOWINGS));
    return sentences;
  }

  private static String unbeaten(int all, int unbeaten) {
    return unbeaten == 1
        ? "Of %d programmes 1 is unbeaten: it is as good as any other on every aim and better on one."
            .formatted(all)
        : "Of %d programmes %d are unbeaten: for none of these is another as good on every aim and better on one."
            .formatted(all, unbeaten);
  }

  /** Whether a programme is better by an aim than the one nearest to all, and reads so. */
  private boolean betters(PlanAim aim, int number) {
    ProgrammeOutcome now = plan.present().outcome();
    ProgrammeOutcome best = plan.programmes().get(ranking.best()).outcome();
    return aim.compare(plan.programmes().get(number).outcome(), best, now) < 0
        && !figure(aim, number).equals(figure(aim, ranking.best()));
  }

  private String figure(PlanAim aim, int number) {
    return aims.figure(aim, plan.programmes().get(number).outcome());
  }

  private String sentence(PlanAim aim, int number) {
    Result most = plan.programmes().get(number);
    return "If %s were all that counts: %s (%s instead of %s)%s."
        .formatted(
            aims.wish(aim),
            inASentence(number),
            figure(aim, number),
            figure(aim, ranking.best()),
            price(aim, most));
  }

  /**
   * The aim on which an extreme programme falls furthest behind the one nearest to all aims, and
   * growth where it falls behind on that too.
   */
  private String price(PlanAim gained, Result most) {
    Result best = plan.programmes().get(ranking.best());
    PlanAim worst = null;
    double furthest = 0;
    for (PlanAim aim : weights.chosen()) {
      double behind = steps(aim, most, best);
      if (aim != gained && behind > furthest) {
        furthest = behind;
        worst = aim;
      }
    }
    List<String> costs = new ArrayList<>();
    if (worst != null) {
      costs.add(cost(worst, most));
    }
    if (worst != PlanAim.GROWTH && gained != PlanAim.GROWTH && growsLess(most, best)) {
      costs.add(cost(PlanAim.GROWTH, most));
    }
    return costs.isEmpty() ? "" : ", at the price of " + ProgrammeWords.joined(costs);
  }

  private String cost(PlanAim aim, Result result) {
    return "%s (%s)".formatted(aims.cost(aim), aims.figure(aim, result.outcome()));
  }

  private boolean growsLess(Result one, Result other) {
    ProgrammeOutcome now = plan.present().outcome();
    return PlanAim.GROWTH.compare(one.outcome(), other.outcome(), now) > 0
        && !aims.figure(PlanAim.GROWTH, one.outcome())
            .equals(aims.figure(PlanAim.GROWTH, other.outcome()));
  }

  /** How far one programme lies behind another as a share of the range of all unbeaten ones. */
  private double steps(PlanAim aim, Result one, Result other) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int number : ranking.unbeatenByDistance()) {
      double value = value(aim, plan.programmes().get(number));
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    return high > low ? (value(aim, one) - value(aim, other)) / (high - low) : 0;
  }

  private double value(PlanAim aim, Result result) {
    return aim.of(result.outcome(), plan.present().outcome());
  }

  /** A name that somebody gave stays as it is; a search gives numbers. */
  private String inASentence(int number) {
    PlannedProgramme planned = plan.programmes().get(number).planned();
    return switch (planned.origin()) {
      case PRESENT -> "as now";
      case GIVEN -> programmes.name(planned);
      case SEARCH -> "number %d, %s".formatted(number, programmes.parts(planned.programme()));
    };
  }
}
