package leafturn.web;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import leafturn.records.trial.SizeDocument;
import leafturn.reports.figure.PowerFigure;
import leafturn.reports.trial.SizeTable;
import leafturn.reports.trial.SizeWords;
import leafturn.trials.power.SizeAnswer;
import leafturn.trials.power.SizeAnswer.AtUnits;
import leafturn.web.form.Form;
import leafturn.web.trial.SizeForm;
import org.jspecify.annotations.Nullable;

/**
 * How many yards a trial of the book needs, and what its number can show.
 *
 * @param id of the trial
 * @param name of the trial
 * @param outcome whose starting values stand in the form
 * @param form the question; null while the plan has faults
 * @param planFaults what the plan lacks, in sentences
 * @param answer null where the question has faults
 */
public record TrialSizePage(
    String id,
    String name,
    String outcome,
    @Nullable Form form,
    List<String> planFaults,
    @Nullable Answer answer) {
  public TrialSizePage {
    planFaults = List.copyOf(planFaults);
  }

  /**
   * The answer.
   *
   * @param headline its first sentence
   * @param words the others
   * @param warnings what to take care of
   * @param power what power is, in sentences
   * @param convention which rejections count
   * @param table what other numbers of units can show
   * @param figures the figure, wide and narrow
   * @param figureWords what the figure shows
   */
  public record Answer(
      String headline,
      List<String> words,
      List<String> warnings,
      List<String> power,
      String convention,
      SizeTable table,
      List<String> figures,
      String figureWords) {
    /**
     * @param asked the question as it follows from the plan
     */
    static Answer of(SizeDocument document, SizeAnswer answer, SizeForm asked) {
      SizeWords wording = new SizeWords(document);
      List<String> words = new ArrayList<>(wording.of(answer));
      words.addAll(asked.ofList());
      List<String> warnings = new ArrayList<>(asked.apart());
      warnings.addAll(wording.warnings(answer));
      List<PowerFigure.Line> lines = lines(answer.table());
      PowerFigure figure =
          new PowerFigure(
              document.size().design().layout().units(), document.size().power(), lines);
      return new Answer(
          words.get(0),
          words.subList(1, words.size()),
          warnings,
          wording.power(),
          wording.convention(),
          SizeTable.of(document, answer),
          lines.isEmpty() ? List.of() : List.of(figure.draw(true), figure.draw(false)),
          wording.figure(answer));
    }

    private static List<PowerFigure.Line> lines(List<AtUnits> table) {
      List<PowerFigure.Line> lines = new ArrayList<>();
      List<Integer> units = table.stream().map(AtUnits::units).toList();
      if (table.stream().noneMatch(row -> Double.isNaN(row.power()))) {
        lines.add(
            new PowerFigure.Line(
                "to find the difference",
                units,
                table.stream().map(AtUnits::power).collect(Collectors.toList())));
      }
      if (table.stream().noneMatch(row -> Double.isNaN(row.equivalencePower()))) {
        lines.add(
            new PowerFigure.Line(
                "to show equivalence",
                units,
                table.stream().map(AtUnits::equivalencePower).collect(Collectors.toList())));
      }
      return lines;
    }
  }
}
