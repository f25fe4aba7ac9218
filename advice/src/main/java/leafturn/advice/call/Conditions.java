package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.util.ArrayList;
import java.util.List;

/** What would change the answer: the facts at the lawn that a model of weather cannot know. */
final class Conditions {
  private final Prospect prospect;
  private final CallRules rules;
  private final Reader reader;

  Conditions(Prospect prospect) {
    this.prospect = prospect;
    this.rules = prospect.rules();
    this.reader = prospect.reader();
  }

  /** Conditions under which another answer would hold, for the choice made. */
  List<String> of(Plan plan) {
    List<String> changes = new ArrayList<>();
    if (plan.choice() == Choice.MOW_AND_RETURN && !prospect.wet(0)) {
      changes.add(whenWet());
    }
    if (plan.choice() == Choice.WAIT_AND_RETURN && prospect.wet(0) && prospect.due(0)) {
      changes.add(
          "If the leaves are dry after all: mow today and %s.".formatted(reader.giveBack()));
    }
    changes.addAll(plan.returned() ? whenTaller() : whenShorter());
    if (prospect.watered()) {
      changes.add("If the sprinklers have just run: wait until leaves and ground are dry.");
    }
    changes.add(
        "If annual bluegrass is in seed and you do not want more of it: %s, and keep it off cold heaps and beds."
            .formatted(reader.take()));
    changes.add(
        "If a weedkiller was used: do as its label says about mowing and clippings, whatever stands here.");
    return changes;
  }

  private String whenWet() {
    double dry = prospect.dryGPerM2(prospect.lengthMm(0, prospect.cutHeightMm()));
    double index = prospect.clumpIndex(dry, true);
    return index > rules.threshold(CallRule.CLUMPS)
        ? say(
            "If the leaves are wet: wait until they are dry; the clump index would be %.1f.", index)
        : say(
            "If the leaves are wet: better wait until they are dry, though clumps stay unlikely at an index of %.1f.",
            index);
  }

  private List<String> whenTaller() {
    return List.of(
        say(
            "If it stands above %s when you get there: raise the deck and cut twice.",
            reader.height(prospect.cutHeightMm() / (1 - prospect.thirdAndTolerance()))),
        say(
            "If it stands above %s: %s, and step the height down.",
            reader.height(prospect.cutHeightMm() / (1 - rules.threshold(CallRule.HALF))),
            reader.take()));
  }

  private List<String> whenShorter() {
    return List.of(
        say(
            "If it stands below %s and the leaves are dry: %s the clippings.",
            reader.height(returnableMm()), reader.giveBack()));
  }

  /** Height up to which dry clippings may be returned: by share, length and load. */
  private double returnableMm() {
    double cutMm = prospect.cutHeightMm();
    double byShare = cutMm / (1 - rules.threshold(CallRule.ONE_THIRD));
    double byLength = cutMm + rules.threshold(CallRule.LENGTH);
    double gPerMm = prospect.dryGPerM2(1) * rules.threshold(CallRule.DECK_FACTOR);
    double byLoad =
        cutMm
            + rules.threshold(CallRule.CLUMPS) * rules.threshold(CallRule.CLUMP_LIMIT_DRY) / gPerMm;
    return Math.min(byShare, Math.min(byLength, byLoad));
  }
}
