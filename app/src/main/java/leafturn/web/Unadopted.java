package leafturn.web;

/**
 * A programme of a season plan that is to be adopted, as the form shows it.
 *
 * @param number the programme that was chosen; empty for the best one
 * @param from first day as it was typed
 * @param fault what is wrong with that day; empty where nothing is
 */
public record Unadopted(String number, String from, String fault) {
  /** True when a programme of the plan stands in the form. */
  public boolean takes(SeasonAnswer.Row row) {
    return number.isEmpty() ? row.best() : number.equals(String.valueOf(row.number()));
  }

  /** True when the day is to be put right. */
  public boolean faulty() {
    return !fault.isEmpty();
  }
}
