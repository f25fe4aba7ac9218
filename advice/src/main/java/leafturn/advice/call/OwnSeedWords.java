package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

/** Stalks and seed heads of the lawn's own grass, which are no reason to collect. */
record OwnSeedWords(Prospect prospect) {
  Reason stalks() {
    boolean looked = prospect.known().seedHeads().basis() == SeedHeads.Basis.NOT_SEEN;
    return reason(
        "The lawn's own stalks",
        say(
            "are no reason to %s: they sow nothing unwanted. A sharp blade cuts them clean.%s",
            prospect.reader().take(),
            looked
                ? " No annual bluegrass was seen, and that counts for more than the warmth of the year."
                : ""));
  }

  /** Of a lawn of annual bluegrass. */
  Reason seedHeads() {
    return reason(
        "The lawn's own seed heads",
        say(
            "are no reason to %s: this lawn is annual bluegrass itself, and its soil is full of that seed.",
            prospect.reader().take()));
  }

  private Reason reason(String headline, String meaning) {
    return Reason.of(
        prospect.rules().entry(CallRule.SEED_HEADS), headline, meaning, "no limit", false);
  }
}
