package leafturn.reports.trial;

import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.DisplayNumber;
import leafturn.records.trial.SizeDocument;
import leafturn.trials.power.Layout;
import leafturn.trials.power.SimulatedPower;
import leafturn.trials.power.SimulationQuestion;
import leafturn.trials.power.SizeQuestion;

/** What simulated trials found, in sentences. */
final class SimulationWords {
  private final SizeQuestion question;
  private final Layout layout;
  private final SizeNumbers numbers;

  SimulationWords(SizeDocument document) {
    this.question = document.size();
    this.layout = question.design().layout();
    this.numbers = new SizeNumbers(document);
  }

  /** How simulated trials are analysed. */
  static String analysis(SimulationQuestion question) {
    if (question.analysis() != null) {
      return "the mixed model of the file, on every reading";
    }
    return question.size().design().layout() == Layout.SPLIT_YARD
        ? "paired differences of season means"
        : "the usual mixed model of the design on season means, with Kenward and Roger's degrees of freedom";
  }

  /** What simulated trials found. */
  public List<String> of(SimulationQuestion asked, SimulatedPower simulated) {
    List<String> words = new ArrayList<>();
    words.add(
        "%s whole trials were simulated from seed %d, each analysed by %s; all rejections count."
            .formatted(
                DisplayNumber.decimals(simulated.trials(), 0), asked.seed(), analysis(asked)));
    if (simulated.found() != null) {
      words.add(
          "The power to find %s is %s."
              .formatted(numbers.effect(question.difference()), share(simulated.found())));
    }
    if (simulated.equivalent() != null) {
      words.add(
          "The power to show a difference within %s, where in truth it is %s, is %s."
              .formatted(
                  numbers.margin(question.margin()),
                  numbers.truth(),
                  share(simulated.equivalent())));
    }
    if (!layout.hasFormula()) {
      words.add(
          "More yards cannot replace years: however many, the variance of the difference stays above %s, judged by %d degrees of freedom."
              .formatted(
                  SizeNumbers.number(
                      2 * asked.around().practiceByYear() / question.design().years()),
                  question.design().years() - 1));
    }
    if (simulated.notAnalysed() > 0) {
      words.add(
          "%d of them could not be analysed and count as having shown nothing."
              .formatted(simulated.notAnalysed()));
    }
    return words;
  }

  private static String share(SimulatedPower.Share share) {
    return "%s (Monte Carlo error %s, 95 %% interval %s to %s)"
        .formatted(
            SizeNumbers.percent(share.share()),
            DisplayNumber.significant(100 * share.error(), 2) + " points",
            SizeNumbers.percent(share.low()),
            SizeNumbers.percent(share.high()));
  }
}
