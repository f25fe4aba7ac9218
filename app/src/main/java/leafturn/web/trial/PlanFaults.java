package leafturn.web.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leafturn.records.Faults.Fault;
import leafturn.records.InputException;
import leafturn.web.form.Field.Choice;

/** Faults of a plan's document as its form tells them: beside a field of its own, in its words. */
public final class PlanFaults {
  private static final String MISSING = "it is missing";

  /** The field beside which the faults of a list or a section stand. */
  private static final Map<String, String> BESIDE =
      Map.of(
          "arms", "arms[0].name",
          "secondArms", "secondArms[0].name",
          "lawns", TrialPlanForm.LAWNS,
          "cores", "cores.dates",
          "outcomes", "outcomes[0].name",
          "protocol", "protocol.feed",
          "plots", "plots.passes",
          "season", "season.from");

  /** What is asked for where a whole list or section is missing. */
  private static final Map<String, String> ASKED =
      Map.of(
          "arms", "name the arms that are compared, two or more.",
          "outcomes", "say what is observed; one outcome is primary and alone gets a verdict.",
          "dates", "give the days on which something is read, in order.",
          "season", "give the first and the last day of the season.",
          "lawns", "none is chosen; choose the lawns that take part.");

  private PlanFaults() {}

  /** The faults of a document, each once. */
  public static List<Fault> of(InputException found) {
    List<Fault> faults = new ArrayList<>();
    for (Fault fault : found.faultsByField()) {
      String asked = ASKED.get(fault.field());
      String sentence =
          asked != null && fault.sentence().startsWith(MISSING) ? asked : inWords(fault.sentence());
      String beside = BESIDE.getOrDefault(fault.field(), fault.field());
      faults.add(new Fault(beside, sentence, sentence));
    }
    return faults.stream().distinct().toList();
  }

  /** Designs as the form calls them, not as the document does. */
  private static String inWords(String sentence) {
    String words = sentence.replace(MISSING + "; give ", "fill it in: ");
    for (Choice design : PlanChoices.DESIGNS) {
      String name = design.words().replaceFirst("[:,].*", "");
      words = words.replaceAll("\\b" + design.value() + "\\b", "“" + name + "”");
    }
    return words;
  }
}
