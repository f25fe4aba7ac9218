package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import leafturn.advice.call.Weighing.Weighed;
import leafturn.model.grass.Species;

/** What would change the answer: the facts at the lawn that a model of weather cannot know. */
final class Conditions {
  /** What is no longer broken once the leaves of a lawn that is not too tall are dry. */
  private static final Set<CallRule> BROKEN_BY_WET =
      EnumSet.of(CallRule.WET, CallRule.WET_RETURN, CallRule.CLUMPS, CallRule.CLUMPS_HEAVY);

  private final Prospect prospect;
  private final CallRules rules;
  private final Reader reader;
  private final Known known;

  Conditions(Prospect prospect) {
    this.prospect = prospect;
    this.rules = prospect.rules();
    this.reader = prospect.reader();
    this.known = prospect.known();
  }

  /** Conditions under which another answer would hold, for the choice made; none holds already. */
  List<String> of(Plan plan, Weighed returnToday) {
    List<String> changes = new ArrayList<>();
    wetness(plan, returnToday, changes);
    new DroughtLook(prospect).change(plan).ifPresent(changes::add);
    if (plan.choice() != Choice.LOWER_ONCE_AND_COLLECT) {
      changes.addAll(plan.returned() ? whenTaller(plan) : whenReturnable(plan));
    }
    if (prospect.watered()) {
      changes.add("If the sprinklers have just run: wait until leaves and ground are dry.");
    }
    if (plan.choice() == Choice.CHOP_LEAVES_AND_RETURN) {
      changes.add(
          say(
              "If leaves hide more than %s of the turf: collect them, as brown stock for the heap.",
              Words.percent(rules.threshold(CallRule.LEAF_COVER))));
    }
    anotherDay(plan, changes);
    annualBluegrass(plan, changes);
    straw(plan, changes);
    treated(changes);
    return changes;
  }

  /** What would call for a look or a cut sooner, where the lawn is left alone. */
  List<String> whenLeft(CallRule rule) {
    List<String> changes = new ArrayList<>();
    if (rule == CallRule.DORMANT || rule == CallRule.HARDLY_GROWING) {
      changes.add(
          say(
              known.wilting().isPresent()
                  ? "If it stands up again after water or rain: mow once %s would come off."
                  : "If it turns green after rain: mow again once %s would come off.",
              prospect.rules().third()));
    }
    straw(Plan.unmown(), changes);
    if (rule == CallRule.GREEN_UP) {
      changes.add(
          say(
              "If it must look tidy before: take off only the tips, well above %s, and let the straw stand.",
              reader.height(prospect.cutHeightMm())));
    }
    return changes;
  }

  private void wetness(Plan plan, Weighed returnToday, List<String> changes) {
    if (plan.choice() == Choice.MOW_AND_RETURN && !prospect.wet(0)) {
      changes.add(whenWet());
    }
    if (plan.returned() && plan.day() == 0 && prospect.laterToday() && prospect.wetNow()) {
      changes.add(
          known.holds(prospect.date(0)).any()
              ? "If it must be mown wet: spread what clumps; the clippings have nowhere to go."
              : mownWet());
    }
    if (plan.choice() == Choice.WAIT_AND_RETURN
        && prospect.wet(0)
        && prospect.heightMm(0) <= returnableMm()
        && BROKEN_BY_WET.containsAll(returnToday.broken())) {
      changes.add(
          "If the leaves are dry after all: mow today and %s.".formatted(reader.giveBackAlone()));
    }
    tomorrow(plan, changes);
  }

  /** What tomorrow's hours would change, where they are or may be wet. */
  private void tomorrow(Plan plan, List<String> changes) {
    if (plan.day() == 1 && plan.returned() && prospect.leaves().dryAfterRain(1)) {
      changes.add(
          "If tomorrow stays wet: take the first dry hours after it, and raise the deck where it has grown too tall by then.");
    }
    boolean inTime =
        prospect.heightMm(1) <= prospect.cutHeightMm() / (1 - prospect.thirdAndTolerance());
    if (plan.day() > 1 && prospect.wet(1) && prospect.visit(1) && inTime) {
      changes.add(
          say("If tomorrow brings dry hours after all: mow then and %s.", reader.giveBackAlone()));
    }
  }

  /** What a visit between the usual ones would spare, where the next one is late or wet. */
  private void anotherDay(Plan plan, List<String> changes) {
    Due due = prospect.due();
    if (known.facts().visits().anyDay()) {
      return;
    }
    if (plan.day() < 2 || due.safe(plan.day())) {
      new DryDayBefore(prospect).change(plan).ifPresent(changes::add);
      return;
    }
    int safe = 0;
    while (safe + 1 < plan.day() && due.safe(safe + 1)) {
      safe++;
    }
    DayNames days = new DayNames(prospect.today().on());
    changes.add(
        safe == 0
            ? "If somebody can come sooner: take the first dry and firm day, before it has grown on."
            : say(
                "If somebody can come sooner: take the first dry and firm day up to %s, while no more than %s comes off.",
                days.name(safe), rules.third()));
  }

  private void annualBluegrass(Plan plan, List<String> changes) {
    boolean none =
        known.facts().place().annualBluegrass() == Place.AnnualBluegrass.NONE
            || prospect.grass() == Species.ANNUAL_BLUEGRASS;
    boolean looked = known.seedHeads().basis() == SeedHeads.Basis.NOT_SEEN;
    if (none || plan.choice() == Choice.LOWER_ONCE_AND_COLLECT) {
      return;
    }
    if (!known.inSeed()
        && plan.returned()
        && known.seedHeads().near()
        && known.holds(prospect.date(plan.day())).none()) {
      changes.add(
          say(
              "If annual bluegrass %s in seed and you do not want more of it: %s, and keep it off cold heaps and beds.",
              looked ? "is found" : "is", reader.take()));
    }
  }

  private void straw(Plan plan, List<String> changes) {
    GreenUp greenUp = new GreenUp(prospect);
    if (plan.choice() == Choice.LOWER_ONCE_AND_COLLECT) {
      changes.add("If frost is still to come: wait, for what has turned green would be harmed.");
    } else if (greenUp.toBeLowered()) {
      changes.add(
          say(
              "Once frost is past: lower the straw once to %s and %s.",
              reader.height(GreenUp.lowMm(prospect)), reader.take()));
    } else if (greenUp.unseen()) {
      changes.add(
          say(
              "If winter's straw still stands and turns green: lower it once to %s and %s, once frost is past.",
              reader.height(GreenUp.lowMm(prospect)), reader.take()));
    }
  }

  private void treated(List<String> changes) {
    if (known.facts().treatments().isEmpty()) {
      changes.add(
          "If a weedkiller was used: do as its label says about mowing and clippings, whatever stands here.");
    }
  }

  private String mownWet() {
    double index = wetIndex();
    return index > rules.threshold(CallRule.CLUMPS)
        ? say("If it must be mown wet: %s, for wet clippings clump.", reader.take())
        : say(
            "If it must be mown wet: %s, for wet clippings cling, though clumps stay unlikely at an index of %.1f.",
            reader.take(), index);
  }

  private double wetIndex() {
    return prospect.clumpIndex(
        prospect.dryGPerM2(prospect.lengthMm(0, prospect.cutHeightMm())), true);
  }

  private String whenWet() {
    double index = wetIndex();
    return index > rules.threshold(CallRule.CLUMPS)
        ? say(
            "If the leaves are wet: wait until they are dry; the clump index would be %.1f.", index)
        : say(
            "If the leaves are wet: better wait until they are dry, though clumps stay unlikely at an index of %.1f.",
            index);
  }

  private List<String> whenTaller(Plan plan) {
    List<String> changes = new ArrayList<>();
    double heightMm = prospect.heightMm(plan.day());
    double thirdMm = prospect.cutHeightMm() / (1 - prospect.thirdAndTolerance());
    if (!plan.inSteps() && heightMm <= thirdMm) {
      changes.add(
          say(
              "If it stands above %s when you get there: raise the deck and cut twice.",
              reader.height(thirdMm)));
    }
    if (known.newlySeeded()
        || heightMm > prospect.cutHeightMm() / (1 - rules.threshold(CallRule.HALF))) {
      return changes;
    }
    changes.add(
        known.holds(prospect.date(plan.day())).any()
            ? say(
                "If it stands above %s: step it down in three cuts; nothing leaves the lawn.",
                reader.height(prospect.cutHeightMm() / (1 - rules.threshold(CallRule.HALF))))
            : say(
                "If it stands above %s: raise the deck, %s, and step the height down.",
                reader.height(prospect.cutHeightMm() / (1 - rules.threshold(CallRule.HALF))),
                reader.take()));
    return changes;
  }

  /** All that would have to be otherwise for collected clippings to be returned. */
  private List<String> whenReturnable(Plan plan) {
    List<String> causes = new ArrayList<>();
    int day = plan.day();
    if (prospect.tallestMm(day) > returnableMm()) {
      causes.add(say("it stands below %s", reader.height(returnableMm())));
    }
    if (prospect.wet(day) || (day == 0 && prospect.wetNow())) {
      causes.add("the leaves are dry");
    }
    if (prospect.foreignSeed()) {
      causes.add("no annual bluegrass is in seed any more or nobody minds it");
    }
    double hidden = rules.threshold(CallRule.LEAF_COVER);
    if (known.leafCoverFraction() > hidden) {
      causes.add(say("fallen leaves hide no more than %s of the turf", Words.percent(hidden)));
    }
    if (known.facts().wishes().noClippings()) {
      causes.add("the client does not mind clippings");
    }
    return causes.isEmpty()
        ? List.of()
        : List.of(say("If %s: %s the clippings.", Words.list(causes), reader.giveBack()));
  }

  /** Height up to which dry clippings may be returned: by share, length and load. */
  private double returnableMm() {
    double cutMm = prospect.cutHeightMm();
    double byShare = cutMm / (1 - rules.threshold(CallRule.ONE_THIRD));
    double byLength =
        cutMm + rules.threshold(CallRule.LENGTH) / prospect.passes().pieceMm(1, false);
    double gPerMm = prospect.dryGPerM2(1) * prospect.passes().thickest(false);
    double byLoad =
        cutMm
            + rules.threshold(CallRule.CLUMPS) * rules.threshold(CallRule.CLUMP_LIMIT_DRY) / gPerMm;
    return Math.min(byShare, Math.min(byLength, byLoad));
  }
}
