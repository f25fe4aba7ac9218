package leafturn.reports.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import leafturn.records.Dates;
import leafturn.reports.DayWords;
import leafturn.reports.figure.TrialCourseFigure;
import leafturn.reports.figure.TrialDatesFigure;
import leafturn.reports.figure.TrialFormat;
import leafturn.reports.figure.TrialUnitsFigure;
import leafturn.trials.design.Contrast;
import leafturn.trials.design.Outcome;
import leafturn.trials.findings.DatesModel;
import leafturn.trials.findings.Effect;
import leafturn.trials.findings.OutcomeFindings;
import leafturn.trials.findings.SeasonTable;
import leafturn.trials.findings.TrialFacts;

/** The pictures of one outcome. */
final class OutcomeFigures {
  private final TrialFacts facts;
  private final OutcomeFindings found;
  private final EffectWords words;
  private final boolean fixed;

  /**
   * @param fixed whether the margin was fixed beforehand
   */
  OutcomeFigures(TrialFacts facts, OutcomeFindings found, boolean fixed) {
    this.fixed = fixed;
    this.facts = facts;
    this.found = found;
    this.words = new EffectWords(found.outcome());
  }

  /** A date as people write it; other words as they are. */
  static String date(String text) {
    LocalDate day = Dates.parse(text);
    return day == null ? text : DayWords.date(day);
  }

  String differences(TrialFormat format) {
    Effect effect = found.effects().get(0);
    List<TrialDatesFigure.Mark> dates = new ArrayList<>();
    DatesModel model = found.support().dates();
    if (model != null) {
      model.differences().stream()
          .filter(each -> each.contrast().equals(effect.contrast()))
          .flatMap(each -> each.dates().stream())
          .forEach(each -> dates.add(mark(each)));
    }
    Effect.Estimated season = effect.estimated();
    Effect.Equivalence tests = effect.equivalence();
    boolean comparable = found.outcome().summary() != Outcome.Summary.SLOPE;
    return new TrialDatesFigure(
            axis(effect),
            differencesWords() + " The same values are in the tables below.",
            comparable ? dates : List.of(),
            new TrialDatesFigure.Mark(
                "season",
                0,
                season.difference(),
                season.interval().lower(),
                season.interval().upper()),
            tests == null ? Double.NaN : tests.margin(),
            words.isRatio())
        .draw(format);
  }

  private TrialDatesFigure.Mark mark(DatesModel.AtDate each) {
    int at = found.table().dates().indexOf(each.date());
    return new TrialDatesFigure.Mark(
        date(each.date()),
        found.table().days()[at],
        each.difference(),
        each.interval().lower(),
        each.interval().upper());
  }

  private String axis(Effect effect) {
    String unit = words.isRatio() || words.unit().isEmpty() ? "" : ", " + words.unit();
    String sign = words.isRatio() ? " : " : " − ";
    return effect.contrast().first() + sign + effect.contrast().second() + unit;
  }

  /** "ratio of 'returned' to 'collected'", "difference 'returned' less 'collected'". */
  static String pair(Contrast contrast, boolean ratio) {
    return (ratio ? "ratio of '%s' to '%s'" : "difference '%s' less '%s'")
        .formatted(contrast.first(), contrast.second());
  }

  String differencesWords() {
    Effect effect = found.effects().get(0);
    String margin =
        effect.equivalence() == null
            ? ""
            : fixed
                ? " The band is the margin that matters, fixed beforehand."
                : " The band is the margin that matters.";
    boolean byDate = found.support().dates() != null;
    return "The %s%s. %s%s"
        .formatted(
            pair(effect.contrast(), words.isRatio()),
            byDate ? " on each date and over the season" : " over the season",
            byDate
                ? "Intervals of the dates hold for all of them at once (95\u00a0%)."
                : "With its 95\u00a0% interval.",
            margin);
  }

  String course(TrialFormat format) {
    SeasonTable table = found.table();
    List<TrialCourseFigure.Course> courses = new ArrayList<>();
    for (String arm : arms()) {
      courses.add(new TrialCourseFigure.Course(arm, OutcomeTables.armMeans(table, arm)));
    }
    return new TrialCourseFigure(
            title(),
            courseWords() + " The same values are in the table below.",
            table.dates().stream().map(OutcomeFigures::date).toList(),
            table.days(),
            courses,
            words.isRatio())
        .draw(format);
  }

  String courseWords() {
    return "The mean of each of %s from date to date%s; nothing is tested."
        .formatted(String.join(", ", arms()), words.isRatio() ? " (geometric means)" : "");
  }

  private String title() {
    String unit = found.outcome().unit();
    String name = EffectWords.name(found.outcome());
    return unit.isEmpty() ? name : name + ", " + unit;
  }

  /** All arms, those compared with others first. */
  List<String> arms() {
    return arms(facts, found.table());
  }

  static List<String> arms(TrialFacts facts, SeasonTable table) {
    List<String> arms = new ArrayList<>();
    facts.contrasts().forEach(each -> addNew(arms, each.second()));
    facts.contrasts().forEach(each -> addNew(arms, each.first()));
    table.plots().forEach(plot -> addNew(arms, plot.arm()));
    return arms;
  }

  private static void addNew(List<String> arms, String arm) {
    if (!arms.contains(arm)) {
      arms.add(arm);
    }
  }

  String units(TrialFormat format) {
    SeasonTable table = found.table();
    List<TrialUnitsFigure.Unit> units = new ArrayList<>();
    for (String unit : table.units()) {
      List<Double> values =
          arms().stream().map(arm -> OutcomeTables.season(found, unit, arm)).toList();
      if (values.stream().anyMatch(Double::isFinite)) {
        units.add(new TrialUnitsFigure.Unit(Objects.requireNonNull(unit), values));
      }
    }
    return new TrialUnitsFigure(
            title(),
            unitsWords() + " The same values are in the table below.",
            arms(),
            units,
            words.isRatio())
        .draw(format);
  }

  String unitsWords() {
    return "The season of every plot; a line joins the plots of one %s. Large marks are the means."
        .formatted(facts.unitWord());
  }
}
