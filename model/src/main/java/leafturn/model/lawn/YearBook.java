package leafturn.model.lawn;

import java.time.Year;
import java.util.ArrayList;
import java.util.List;
import leafturn.model.Flows;
import leafturn.model.Stores;

/** Writes the account of each calendar year while a run goes on. */
public final class YearBook implements DayListener {
  private static final double KG_PER_HA = 10;

  private final List<YearAccount> years = new ArrayList<>();
  private final double[] opening = new double[Flows.BOUNDARY];
  private int days;

  @Override
  public void dayDone(LawnRun run) {
    days++;
    DailyTerms terms = run.terms();
    int day = run.day();
    boolean last = day + 1 == terms.days() || terms.year(day + 1) != terms.year(day);
    if (last) {
      years.add(account(run, terms.year(day)));
      for (int flow = 0; flow < opening.length; flow++) {
        opening[flow] = run.total(flow);
      }
      days = 0;
    }
  }

  /** The years so far. */
  public List<YearAccount> years() {
    return List.copyOf(years);
  }

  /** Begins to count at this moment of a run. */
  public void open(LawnRun run) {
    for (int flow = 0; flow < opening.length; flow++) {
      opening[flow] = run.total(flow);
    }
  }

  private YearAccount account(LawnRun run, int year) {
    return new YearAccount(
        year,
        days,
        days < Year.of(year).length(),
        new YearAccount.Clippings(
            kgPerHa(run, Flows.CLIPPINGS_G),
            kgPerHa(run, Flows.CLIPPINGS_N),
            (int) Math.round(sum(run, Flows.MOWINGS)),
            kgPerHa(run, Flows.RETURNED_G),
            kgPerHa(run, Flows.GROWTH_G),
            kgPerHa(run, Flows.UPTAKE_N)),
        new YearAccount.NitrogenLosses(
            kgPerHa(run, Flows.LEACHED_N),
            kgPerHa(run, Flows.VOLATILISED_N),
            kgPerHa(run, Flows.DENITRIFIED_N),
            kgPerHa(run, Flows.COLLECTED_N)),
        new YearAccount.Water(
            sum(run, Flows.RAIN_MM),
            sum(run, Flows.EVAPOTRANSPIRATION_MM),
            sum(run, Flows.DRAINAGE_MM),
            sum(run, Flows.RUNOFF_MM),
            sum(run, Flows.IRRIGATION_MM)),
        new YearAccount.End(
            run.thatchMm(),
            run.clippingsShareOfThatch(),
            run.soilPhosphorusPpm(),
            run.soilPotassiumPpm(),
            run.store(Stores.HUMUS_N)));
  }

  private double sum(LawnRun run, int flow) {
    return run.total(flow) - opening[flow];
  }

  private double kgPerHa(LawnRun run, int flow) {
    return KG_PER_HA * sum(run, flow);
  }
}
