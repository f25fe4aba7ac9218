package leafturn.advice.call;

/**
 * What a lawn is looked at through.
 *
 * @param asked day, rules and reader
 * @param known what people know
 * @param measured false where the last days' weather was not measured and other days stand in
 */
record Basis(Asked asked, Known known, boolean measured) {
  CallRules rules() {
    return asked.rules();
  }

  Reader reader() {
    return new Reader(asked.units());
  }
}
