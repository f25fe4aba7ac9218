package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

/** Why clippings returned on a day would be seen, for a client who wants none carried in. */
record SeenClippings(Prospect prospect, int day) {

  /** "wet clippings up to 31 mm long": what of them would be seen. */
  String words() {
    String wet = prospect.wet(day) || (day == 0 && prospect.wetNow()) ? "wet " : "";
    boolean tooLong = lengthMm() > prospect.rules().threshold(CallRule.SHORT_PIECES);
    String length = tooLong ? say(" up to %s long", prospect.reader().height(lengthMm())) : "";
    return (wet + length).isEmpty() ? "so many clippings" : wet + "clippings" + length;
  }

  /** The finding of the rule against returning them. */
  Reason reason(boolean against) {
    CallRules rules = prospect.rules();
    return Reason.of(
        rules.entry(CallRule.NO_CLIPPINGS),
        prospect.reader().load(prospect.dryGPerM2(lengthMm())),
        say(
            "%s would be seen %s, and the client wants none carried into the house. Mown dry and twice a week, hardly any would be.",
            Character.toUpperCase(words().charAt(0)) + words().substring(1),
            new DayNames(prospect.today().on()).when(day)),
        say(
            "limit %s, dry, up to %s long",
            prospect.reader().loadLimit(rules.threshold(CallRule.NO_CLIPPINGS)),
            prospect.reader().height(rules.threshold(CallRule.SHORT_PIECES))),
        against);
  }

  private double lengthMm() {
    return prospect.lengthMm(day, prospect.cutHeightMm());
  }
}
