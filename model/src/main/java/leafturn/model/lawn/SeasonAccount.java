package leafturn.model.lawn;

import java.util.List;

/**
 * The account of a run by calendar year.
 *
 * @param years in order
 * @param balance largest error of any day's balance, spin-up included
 * @param end state on the last day
 */
public record SeasonAccount(List<YearAccount> years, BalanceErrors balance, LawnState end) {
  public SeasonAccount {
    years = List.copyOf(years);
  }

  /** Largest errors, mm and g/m2. */
  public record BalanceErrors(
      double waterMm, double cGPerM2, double nGPerM2, double pGPerM2, double kGPerM2) {}
}
