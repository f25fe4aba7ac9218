package leafturn.advice.call;

import static leafturn.advice.call.Words.figure;
import static leafturn.advice.call.Words.percent;
import static leafturn.advice.call.Words.say;

import java.time.format.TextStyle;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What people know that speaks for or against a plan, in words. */
final class KnownReasonWords {
  private final Prospect prospect;
  private final Known known;
  private final CallRules rules;
  private final Reader reader;
  private final DayNames days;
  private final WashingIn washing;

  KnownReasonWords(Prospect prospect) {
    this.prospect = prospect;
    this.known = prospect.known();
    this.rules = prospect.rules();
    this.reader = prospect.reader();
    this.days = new DayNames(prospect.today().on());
    this.washing = new WashingIn(prospect);
  }

  /** The finding of a rule that rests on what people know. */
  Reason reason(CallRule rule, int day, boolean against) {
    return switch (rule) {
      case VISIT -> visit(day, against);
      case LABEL_WAIT -> labelWait(day, against);
      case DORMANT -> dormant(against);
      case WET_SLOPE ->
          written(
              rule,
              say("Slope of %s %%, wet", figure(known.facts().place().slopePercent())),
              "A mower slides on wet grass; the machine's handbook gives its own limit."
                  + wetSeasons(day),
              say("limit %s %% when wet", figure(rules.threshold(rule))),
              against);
      case FEED_COLLECTED, FEED_DRY -> feed(rule, against);
      case HELD -> held(day, against);
      case SEEDLINGS ->
          written(
              rule,
              known.facts().place().sown() == null
                  ? "First cut of a new lawn"
                  : "First cut after sowing",
              say(
                  "Bag and suction pull seedlings. Cut dry soil with a sharp blade, and %s what is short.",
                  reader.giveBack()),
              say(
                  "first cut from %s times the cut height",
                  figure(rules.threshold(CallRule.FIRST_CUT))),
              against);
      case GREEN_UP -> greenUp(day, against);
      case STEMMY -> stemmy(day, against);
      case LEAF_COVER -> leafCover(against);
      case SEED_HEADS -> seedHeads(against);
      case NO_CLIPPINGS -> new SeenClippings(prospect, day).reason(against);
      case WET_RETURN ->
          written(
              rule,
              "Wet clippings",
              "Wet clippings cling and clump, even of grass that is mown often.",
              "no limit",
              against);
      case DISEASE -> disease();
      default -> throw new IllegalArgumentException(rule.id() + " is never a reason by itself");
    };
  }

  /** In how many possible seasons leaves are wet on a day; empty where hours decide. */
  private String wetSeasons(int day) {
    return MowingHours.has(day)
        ? ""
        : say(
            " Leaves are wet %s in %s.",
            days.when(day), Words.ofSeasons(prospect.leaves().wetFraction(day)));
  }

  private Reason visit(int day, boolean against) {
    int next = prospect.nextVisit(day + 1);
    String days = visitDays();
    return written(
        CallRule.VISIT,
        "Nobody can mow " + this.days.name(day),
        next < 0
            ? "and no day is given on which somebody can come."
            : "the next day of mowing is " + this.days.name(next) + ".",
        days.isEmpty() ? "on the days given" : "mown on " + days,
        against);
  }

  private String visitDays() {
    return known.facts().visits().weekdays().stream()
        .sorted()
        .map(day -> day.getDisplayName(TextStyle.FULL, Locale.ENGLISH))
        .collect(Collectors.joining(", "));
  }

  private Reason labelWait(int day, boolean against) {
    Optional<Treatment> treatment = known.labelWait(prospect.date(day));
    return written(
        CallRule.LABEL_WAIT,
        treatment.map(Treatment::product).orElse("A product") + " was applied",
        treatment
            .map(
                each ->
                    say(
                        "on %s; its label asks not to mow before %s.",
                        DayNames.date(each.on()), DayNames.date(Known.mayBeMown(each))))
            .orElse("its label asks to wait."),
        "the label's wait",
        against);
  }

  private Reason dormant(boolean against) {
    Optional<Sighting> wilting = known.wilting();
    if (wilting.isPresent()) {
      return written(
          CallRule.DORMANT,
          "Wilting",
          say(
              "seen on %s. Wilted grass bruises under wheels and feet, and cannot replace the leaf that is cut (common practice, no source).",
              DayNames.date(wilting.get().on())),
          say("counts for %s days", Known.WILTING_DAYS),
          against);
    }
    return written(
        CallRule.DORMANT,
        "At rest in the drought",
        say(
            "seen on %s. Grass at rest does not grow; wheels and feet break its crowns. The model has no rest in drought, so what was seen counts.",
            known.dormant().map(seen -> DayNames.date(seen.on())).orElse("that day")),
        "counts for " + Words.days(rules.threshold(CallRule.DORMANT)),
        against);
  }

  private Reason feed(CallRule rule, boolean against) {
    boolean look = washing.toBeLookedAt().isPresent();
    return written(
        rule,
        look ? "Granular feed may lie dry" : "Granular feed lies dry",
        say(
            "spread on %s%s. The mower would take granules up or throw them; %s, and do not %s before.",
            known.dryFeed().map(feed -> DayNames.date(feed.on())).orElse("an earlier day"),
            washing
                .toBeLookedAt()
                .map(
                    day ->
                        say(
                            ", and %s of rain fell that day, before it or after",
                            reader.water(washing.rainMm(day))))
                .orElse(""),
            wash(look),
            reader.take()),
        labelTells() ? "the label's water" : "usual water; the label's comes first",
        against);
  }

  private String wash(boolean look) {
    String water =
        say(
            "%s first%s",
            reader.height(washing.neededMm()),
            labelTells() ? ", as the label says" : " unless the label says otherwise");
    if (look) {
      return "where a look finds some, have them washed in with " + water;
    }
    if (washing.rainDay().isPresent()) {
      return say("rain that is sure by %s washes them in", days.name(washing.rainDay().getAsInt()));
    }
    return say(
        "%s with %s",
        washing.waterDay().isPresent() ? "wash them in" : "let rain wash them in", water);
  }

  private boolean labelTells() {
    return known.facts().dryFeed().filter(feed -> !Double.isNaN(feed.waterMm())).isPresent();
  }

  private Reason held(int day, boolean against) {
    Holds holds = known.holds(prospect.date(day));
    return written(
        CallRule.HELD,
        say("Clippings held by %s", holds.products()),
        holds.until(),
        holds.basis(),
        against);
  }

  private Reason greenUp(int day, boolean against) {
    GreenUp greenUp = new GreenUp(prospect);
    double frost = greenUp.frostFraction(day);
    if (!greenUp.frostPast(day)) {
      return written(
          CallRule.GREEN_UP,
          "Frost in " + Words.ofSeasons(frost),
          say(
              "within %s of %s. Straw shelters what turns green; lowered too soon, frost takes it.",
              Words.days(greenUp.lookDays()), days.name(day)),
          say("past in %s of them", percent(rules.threshold(CallRule.GREEN_UP_FREE))),
          against);
    }
    return written(
        CallRule.GREEN_UP,
        "Straw that turns green",
        say(
            "Lowering it once to %s lets light and warmth in: an exception to the rule of %s, once a year and never for St. Augustinegrass.%s",
            reader.height(GreenUp.lowMm(prospect)),
            prospect.rules().third(),
            greenUp.whyNotBefore(day)),
        say("%s of the cut height", percent(rules.threshold(CallRule.LOWER_ONCE))),
        against);
  }

  private Reason stemmy(int day, boolean against) {
    return written(
        CallRule.STEMMY,
        Words.days(known.daysUnmown().orElse(0L) + day) + " unmown",
        say(
            "Growth after a gap is long and stemmy and slow to break down: %s the first cut, or cut in steps.",
            reader.take()),
        say(
            "from %s and over %s",
            Words.days(rules.threshold(CallRule.STEMMY)), prospect.rules().third()),
        against);
  }

  private Reason leafCover(boolean against) {
    double cover = known.leafCoverFraction();
    boolean hidden = cover > rules.threshold(CallRule.LEAF_COVER);
    return written(
        CallRule.LEAF_COVER,
        known.leafCoverUntold()
            ? "Fallen leaves on the turf"
            : say("Fallen leaves on %s of the turf", percent(cover)),
        hidden
            ? "They hide too much of it to be chopped in; as brown stock for the heap they are welcome."
            : leavesThatShowTurf(),
        "limit " + percent(rules.threshold(CallRule.LEAF_COVER)),
        against);
  }

  private String leavesThatShowTurf() {
    return known.leafCoverUntold()
        ? "Nobody said how much they hide. Where the turf still shows through they are chopped small and fall between the leaves of grass."
        : "The turf still shows through: chopped small they fall between the leaves of grass.";
  }

  private Reason seedHeads(boolean against) {
    boolean seen = known.seedHeads().basis() == SeedHeads.Basis.SEEN;
    return written(
        CallRule.SEED_HEADS,
        seen ? "Annual bluegrass in seed" : "Annual bluegrass likely in seed",
        say(
            "%s Collected seed heads sow less, but the soil holds seed already: the benefit is modest.",
            seen
                ? "Seen on the lawn."
                : say("By the %s; a look at the lawn overrules it.", known.seedHeads().likelyBy())),
        seen
            ? "a sighting"
            : say("likely from %s of the peak", percent(rules.threshold(CallRule.SEED_HEADS))),
        against);
  }

  private Reason disease() {
    Optional<Sight> disease = known.disease();
    boolean other = disease.filter(sight -> sight == Sight.OTHER_DISEASE).isPresent();
    String name =
        disease.filter(sight -> sight == Sight.BROWN_PATCH).isPresent()
            ? "Brown patch"
            : other ? "Disease seen" : "Dollar spot";
    return written(
        CallRule.DISEASE,
        name,
        other
            ? "Whether collecting helps against this one is not known. Mow this lawn last and clean the deck."
            : say(
                "is no reason to %s: trials found no difference. Mow this lawn last and clean the deck.",
                reader.take()),
        "no limit",
        false);
  }

  private Reason written(
      CallRule rule, String headline, String meaning, String threshold, boolean against) {
    return Reason.of(rules.entry(rule), headline, meaning, threshold, against);
  }
}
