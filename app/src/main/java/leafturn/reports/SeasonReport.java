package leafturn.reports;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import leafturn.model.lawn.SeasonAccount;
import leafturn.model.lawn.SeasonAccount.BalanceErrors;
import leafturn.model.lawn.YearAccount;

/**
 * The account of a lawn's years as people and programs read it; its components are the fields of
 * the JSON document.
 *
 * @param years in order
 * @param balanceWorstError largest error of any day's balance
 * @param notes what was assumed or filled in
 */
public record SeasonReport(List<Year> years, BalanceErrors balanceWorstError, List<String> notes) {

  /**
   * One calendar year. Clipping figures count all that the mower handled, returned or not; thatch
   * and soil test are those of the last day run.
   *
   * @param partial true when the record does not hold the whole year
   */
  public record Year(
      int year,
      double clippingsDryKgPerHa,
      double clippingsNKgPerHa,
      int mowings,
      double returnedDryKgPerHa,
      double leachedNKgPerHa,
      double volatilisedNKgPerHa,
      double denitrifiedNKgPerHa,
      double evapotranspirationMm,
      double drainageMm,
      double runoffMm,
      double irrigationMm,
      double thatchMm,
      double soilPhosphorusPpm,
      double soilPotassiumPpm,
      int days,
      boolean partial,
      double rainMm,
      double collectedNKgPerHa,
      double growthDryKgPerHa,
      double uptakeNKgPerHa,
      double clippingsShareOfThatch) {

    private static Year of(YearAccount account) {
      return new Year(
          account.year(),
          account.clippings().dryKgPerHa(),
          account.clippings().nitrogenKgPerHa(),
          account.clippings().mowings(),
          account.clippings().returnedDryKgPerHa(),
          account.losses().leachedKgPerHa(),
          account.losses().volatilisedKgPerHa(),
          account.losses().denitrifiedKgPerHa(),
          account.water().evapotranspirationMm(),
          account.water().drainageMm(),
          account.water().runoffMm(),
          account.water().irrigationMm(),
          account.end().thatchMm(),
          account.end().soilPhosphorusPpm(),
          account.end().soilPotassiumPpm(),
          account.days(),
          account.partial(),
          account.water().rainMm(),
          account.losses().collectedKgPerHa(),
          account.clippings().growthKgPerHa(),
          account.clippings().uptakeNKgPerHa(),
          account.end().clippingsShareOfThatch());
    }
  }

  private record Column(String title, int decimals, ToDoubleFunction<Year> value) {}

  private static final List<Column> GRASS =
      List.of(
          new Column("mowings", 0, Year::mowings),
          new Column("clippings dry", 0, Year::clippingsDryKgPerHa),
          new Column("of it returned", 0, Year::returnedDryKgPerHa),
          new Column("clippings N", 1, Year::clippingsNKgPerHa),
          new Column("N leached", 1, Year::leachedNKgPerHa),
          new Column("N volatilised", 1, Year::volatilisedNKgPerHa),
          new Column("N denitrified", 1, Year::denitrifiedNKgPerHa));

  private static final List<Column> GROUND =
      List.of(
          new Column("rain mm", 0, Year::rainMm),
          new Column("irrigation mm", 0, Year::irrigationMm),
          new Column("evapotr. mm", 0, Year::evapotranspirationMm),
          new Column("drainage mm", 0, Year::drainageMm),
          new Column("runoff mm", 0, Year::runoffMm),
          new Column("thatch mm", 1, Year::thatchMm),
          new Column("soil P ppm", 1, Year::soilPhosphorusPpm),
          new Column("soil K ppm", 1, Year::soilPotassiumPpm));

  /** The report of an account. */
  public static SeasonReport of(SeasonAccount account, List<String> notes) {
    return new SeasonReport(
        account.years().stream().map(Year::of).toList(), account.balance(), List.copyOf(notes));
  }

  /** The report for a terminal. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("Grass and nitrogen, kg/ha (clippings: all that is cut, returned or not)");
    lines.addAll(table(GRASS));
    lines.add("");
    lines.add("Water, and thatch and soil test at the end of the year");
    lines.addAll(table(GROUND));
    lines.add("");
    if (years.stream().anyMatch(Year::partial)) {
      lines.add("* part of a year; not in the mean");
    }
    lines.add(
        String.format(
            Locale.ROOT,
            "Largest error of a day's balance: water %.0e mm, C %.0e, N %.0e, P %.0e, K %.0e g/m2.",
            balanceWorstError.waterMm(),
            balanceWorstError.cGPerM2(),
            balanceWorstError.nGPerM2(),
            balanceWorstError.pGPerM2(),
            balanceWorstError.kGPerM2()));
    lines.add("Values of the model, not measurements; 'leafturn sources' tells its parameters.");
    notes.forEach(note -> lines.add("Note: " + note));
    return lines;
  }

  private List<String> table(List<Column> columns) {
    List<String> titles = new ArrayList<>(List.of("Year"));
    columns.forEach(column -> titles.add(column.title()));
    TextTable table = new TextTable(titles.toArray(String[]::new));
    for (Year year : years) {
      row(table, year.year() + (year.partial() ? "*" : ""), columns, List.of(year));
    }
    List<Year> whole = years.stream().filter(year -> !year.partial()).toList();
    if (whole.size() > 1) {
      row(table, "mean", columns, whole);
    }
    return table.lines();
  }

  private static void row(TextTable table, String name, List<Column> columns, List<Year> over) {
    List<String> cells = new ArrayList<>(List.of(name));
    for (Column column : columns) {
      double mean = over.stream().mapToDouble(column.value()).average().orElse(Double.NaN);
      cells.add(String.format(Locale.ROOT, "%." + column.decimals() + "f", mean));
    }
    table.row(cells.toArray(String[]::new));
  }
}
