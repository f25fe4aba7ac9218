package leafturn.web.trial;

import java.util.List;
import leafturn.web.form.Field.Choice;

/** What a plan can choose from, as its document and as its pages write it. */
final class PlanChoices {
  static final List<Choice> DESIGNS =
      List.of(
          new Choice("split-yard", "split yards: each lawn halved, a practice on each half"),
          new Choice("randomised-block", "randomised complete blocks"),
          new Choice("latin-square", "Latin square, for two gradients"),
          new Choice("split-plot", "split plot: a second factor on parts of each plot"),
          new Choice("strip-plot", "strip plot: a second factor across the strips"),
          new Choice("paired-strips", "paired strips within one lawn"),
          new Choice("listed", "one of the layouts you list"));

  static final List<Choice> SIDES =
      List.of(
          new Choice("coin", "by a coin for each yard"),
          new Choice("balanced", "balanced over the yards"));

  static final List<Choice> CLIPPINGS =
      List.of(
          Choice.of("collected"),
          Choice.of("returned"),
          new Choice("by rule", "by the rules of the advice"));

  static final List<Choice> KINDS =
      List.of(
          new Choice("rating", "rating by eye"),
          new Choice("measurement", "measurement"),
          new Choice("soil", "soil test"),
          new Choice("tissue", "tissue test"));

  static final List<Choice> SCALES =
      List.of(
          new Choice("identity", "as a difference"),
          new Choice("log", "as a ratio (for P, K, nitrate and masses)"));

  static final List<Choice> SUMMARIES =
      List.of(
          new Choice("season-mean", "mean of the season"),
          new Choice("slope", "change through the season"),
          new Choice("last-date", "value of the last date"));

  static final List<Choice> FEEDS =
      List.of(
          new Choice("equal", "equal for all arms"),
          new Choice("reduced", "deliberately less where clippings are returned"));

  private PlanChoices() {}

  static String design(String value) {
    return words(DESIGNS, value);
  }

  static String kind(String value) {
    return words(KINDS, value);
  }

  static String summary(String value) {
    return words(SUMMARIES, value);
  }

  private static String words(List<Choice> choices, String value) {
    return choices.stream()
        .filter(choice -> choice.value().equals(value))
        .map(Choice::words)
        .findFirst()
        .orElse(value);
  }
}
