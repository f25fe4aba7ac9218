package leafturn.reports;

/**
 * A spread in words: its middle with the unit, and its two ends where they differ once rounded.
 *
 * @param middle for instance "17 g"
 * @param ends for instance "16–19"; empty where there is no range to tell
 * @param unit for instance "g"; empty where the numbers have none
 */
public record SpreadWords(String middle, String ends, String unit) {
  /** Words without a range. */
  public static SpreadWords only(String words) {
    return new SpreadWords(words, "", "");
  }

  /** The ends with their unit: "16–19 g"; empty where there is no range to tell. */
  public String range() {
    return ends.isEmpty() || unit.isEmpty() ? ends : ends + QuantityWords.THIN + unit;
  }

  /** Both in one line: "17 g (16–19)". */
  public String inLine() {
    return ends.isEmpty() ? middle : middle + " (" + ends + ")";
  }
}
