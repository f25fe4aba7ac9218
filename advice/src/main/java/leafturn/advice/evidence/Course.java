package leafturn.advice.evidence;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import leafturn.model.lawn.LawnState;
import leafturn.model.lawn.YearAccount;

/**
 * What became of a plot under a treatment.
 *
 * @param years account of each treatment year
 * @param end state after the last
 */
record Course(List<YearAccount> years, LawnState end) {
  static final ToDoubleFunction<YearAccount> DRY = year -> year.clippings().dryKgPerHa();
  static final ToDoubleFunction<YearAccount> CLIPPING_N =
      year -> year.clippings().nitrogenKgPerHa();
  static final ToDoubleFunction<YearAccount> MOWINGS = year -> year.clippings().mowings();
  static final ToDoubleFunction<YearAccount> GROWTH = year -> year.clippings().growthKgPerHa();
  static final ToDoubleFunction<YearAccount> LEACHED = year -> year.losses().leachedKgPerHa();

  Course {
    years = List.copyOf(years);
  }

  /** A quantity of one treatment year, counted from 1. */
  double year(int year, ToDoubleFunction<YearAccount> quantity) {
    return quantity.applyAsDouble(years.get(year - 1));
  }

  /** Mean over treatment years, both included. */
  double mean(int from, int to, ToDoubleFunction<YearAccount> quantity) {
    return years.subList(from - 1, to).stream().mapToDouble(quantity).average().orElseThrow();
  }

  /** Mean over all treatment years. */
  double mean(ToDoubleFunction<YearAccount> quantity) {
    return mean(1, years.size(), quantity);
  }

  /** Each year's quantity as text. */
  String yearly(ToDoubleFunction<YearAccount> quantity, int decimals, String separator) {
    return years.stream()
        .map(year -> Measured.number(quantity.applyAsDouble(year), decimals))
        .collect(Collectors.joining(separator));
  }

  /** Each year's quantity over that of another course, as text. */
  String yearlyRatio(Course other, ToDoubleFunction<YearAccount> quantity) {
    StringBuilder text = new StringBuilder();
    for (int year = 1; year <= years.size(); year++) {
      text.append(year == 1 ? "" : " ")
          .append(Measured.number(year(year, quantity) / other.year(year, quantity), 2));
    }
    return text.toString();
  }
}
