package leafturn.web.trial;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import leafturn.quantity.Measure;
import leafturn.records.sheet.TrialEventSheet.Happening;
import leafturn.web.form.Field;
import leafturn.web.form.Field.Choice;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;
import leafturn.web.form.FormShape.Group;
import leafturn.web.sheet.Words;

/** The form of a mowing or a mishap; its paths are those of the event's document. */
public final class EventForm {
  private EventForm() {}

  /**
   * The fields.
   *
   * @param plots codes of the plots
   * @param rules for leaving out, of the frozen plan
   */
  public static FormShape shape(List<String> plots, List<String> rules) {
    return new FormShape(List.of(what(plots), mowing(), decision(rules)));
  }

  /** A form with a fault beside each field of a mowing that is filled in for something else. */
  public static Form told(Form form) {
    String what = form.value("what");
    if (what.isEmpty() || what.equals(leafturn.records.Choice.word(Happening.MOWN))) {
      return form;
    }
    Form told = form;
    for (Field field : mowing().fields()) {
      if (!form.value(field.path()).isEmpty()) {
        told =
            told.faulted(
                field.path(), "This is told of a mowing alone; empty it, or choose “mown” above.");
      }
    }
    return told;
  }

  private static Group what(List<String> plots) {
    List<Choice> happenings =
        Stream.concat(
                Stream.of(new Choice("", "")), // nothing is noted that nobody chose
                Stream.of(Happening.values())
                    .map(each -> new Choice(leafturn.records.Choice.word(each), each.words())))
            .toList();
    return new Group(
        "",
        "",
        List.of(
            Field.date("day", "Day").needed(),
            Field.oneOf("what", "What it was", happenings).needed(),
            Field.someOf("plots", "Plots it touched", plots.stream().map(Choice::of).toList())
                .hint("None ticked: all of them."),
            Field.number("areaM2", "Area it touched", Measure.AREA),
            Field.longText("note", "Note")));
  }

  private static Group mowing() {
    return new Group(
        "For a mowing",
        "",
        List.of(
            yesOrNo("mown.sameDay", "All plots of a lawn that day"),
            yesOrNo("mown.collectedFirst", "Collected plots first"),
            yesOrNo("mown.deckCleaned", "Deck cleaned and bag emptied between"),
            Field.number("mown.returnedHeightMm", "Height, clippings returned", Measure.HEIGHT),
            Field.number("mown.collectedHeightMm", "Height, clippings collected", Measure.HEIGHT)));
  }

  private static Group decision(List<String> rules) {
    List<Choice> offered =
        IntStream.range(0, rules.size())
            .mapToObj(i -> new Choice(rules.get(i), "rule " + (i + 1)))
            .toList();
    String named =
        IntStream.range(0, rules.size())
            .mapToObj(i -> "rule %d: %s".formatted(i + 1, rules.get(i).replaceFirst("\\.$", "")))
            .collect(Collectors.joining("; "));
    return new Group(
        "For a mishap: do its plots stay in?",
        "Decide before anybody looks at the results, by the rules of the plan, named by number (rule"
            + " 2) or in their words; it can be decided later.",
        List.of(
            Field.oneOf(
                "exclusion.leftOut",
                "From that day on its plots are",
                List.of(new Choice("true", "left out"), new Choice("false", "kept in"))),
            yesOrNo("exclusion.blind", "Decided without knowing arms and results"),
            Field.text("exclusion.why", "By which rule, or why", offered)
                .hint(
                    named.isEmpty()
                        ? "The frozen plan has no rules; findings tell the reason as one that is none."
                        : "Choose one of the frozen plan (%s). Another reason stays possible; findings tell that it is no rule."
                            .formatted(named))));
  }

  private static Field yesOrNo(String path, String label) {
    return Field.oneOf(path, label, Words.YES_OR_NO);
  }
}
