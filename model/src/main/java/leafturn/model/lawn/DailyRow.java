package leafturn.model.lawn;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import leafturn.model.Flows;
import leafturn.model.Stores;

/**
 * Every state and flow of a day under short names, for tables of days. Flows of the day come first,
 * then per element the stores and what has entered (as a negative sum) and left since the start of
 * the run, then water, height and read-outs.
 */
public final class DailyRow {
  private record Column(String name, ToDoubleFunction<LawnRun> value) {}

  private static final List<Column> COLUMNS = columnsInOrder();

  private DailyRow() {}

  /** Column names in order. */
  public static List<String> names() {
    return COLUMNS.stream().map(Column::name).toList();
  }

  /** Values of the present day in the order of {@link #names()}. */
  public static double[] of(LawnRun run) {
    return COLUMNS.stream().mapToDouble(column -> column.value().applyAsDouble(run)).toArray();
  }

  private static List<Column> columnsInOrder() {
    List<Column> columns = new ArrayList<>();
    flow(columns, "ET0", Flows.REFERENCE_ET_MM);
    flow(columns, "runoff", Flows.RUNOFF_MM);
    flow(columns, "irr", Flows.IRRIGATION_MM);
    flow(columns, "ETa", Flows.EVAPOTRANSPIRATION_MM);
    flow(columns, "drain", Flows.DRAINAGE_MM);
    flow(columns, "w", Flows.ROOT_ZONE_WATER);
    flow(columns, "fT", Flows.GROWTH_TEMPERATURE);
    flow(columns, "fN", Flows.GROWTH_NITROGEN);
    flow(columns, "fWg", Flows.GROWTH_MOISTURE);
    flow(columns, "smo", Flows.SMOTHERING);
    flow(columns, "G", Flows.LEAF_GROWTH_G);
    flow(columns, "U", Flows.UPTAKE_N);
    flow(columns, "nc", Flows.LEAF_N_FRACTION);
    flow(columns, "leachN", Flows.LEACHED_N);
    flow(columns, "mow", Flows.MOWINGS);
    flow(columns, "H_before", Flows.HEIGHT_BEFORE_MM);
    stores(columns, Stores.CARBON, Stores.NITROGEN);
    total(columns, "C_photo", Flows.PHOTOSYNTHESIS_C, -1);
    total(columns, "C_correction", Flows.CORRECTION_C, -1);
    total(columns, "C_co2", Flows.RESPIRED_C, 1);
    total(columns, "C_coll", Flows.COLLECTED_C, 1);
    stores(columns, Stores.NITROGEN, Stores.PHOSPHORUS);
    total(columns, "N_fert", Flows.FERTILISER_N, -1);
    total(columns, "N_dep", Flows.DEPOSITION_N, -1);
    total(columns, "N_correction", Flows.CORRECTION_N, -1);
    total(columns, "N_coll", Flows.COLLECTED_N, 1);
    total(columns, "N_vol", Flows.VOLATILISED_N, 1);
    total(columns, "N_denit", Flows.DENITRIFIED_N, 1);
    total(columns, "N_leach", Flows.LEACHED_N, 1);
    stores(columns, Stores.PHOSPHORUS, Stores.POTASSIUM);
    total(columns, "P_fert", Flows.FERTILISER_P, -1);
    total(columns, "P_correction", Flows.CORRECTION_P, -1);
    total(columns, "P_coll", Flows.COLLECTED_P, 1);
    total(columns, "P_leach", Flows.LEACHED_P, 1);
    stores(columns, Stores.POTASSIUM, Stores.WATER);
    total(columns, "K_fert", Flows.FERTILISER_K, -1);
    total(columns, "K_correction", Flows.CORRECTION_K, -1);
    total(columns, "K_coll", Flows.COLLECTED_K, 1);
    total(columns, "K_leach", Flows.LEACHED_K, 1);
    stores(columns, Stores.WATER, Stores.LEAF_AGE_DAYS);
    columns.add(new Column("Ts", LawnRun::soilC));
    columns.add(new Column("H", LawnRun::heightMm));
    columns.add(new Column("stp", LawnRun::soilPhosphorusPpm));
    columns.add(new Column("stk", LawnRun::soilPotassiumPpm));
    columns.add(new Column("thatch_mm", LawnRun::thatchMm));
    return List.copyOf(columns);
  }

  private static void flow(List<Column> columns, String name, int flow) {
    columns.add(new Column(name, run -> run.flow(flow)));
  }

  private static void total(List<Column> columns, String name, int flow, int sign) {
    columns.add(new Column(name, run -> sign * run.total(flow)));
  }

  private static void stores(List<Column> columns, int from, int to) {
    for (int store = from; store < to; store++) {
      int index = store;
      columns.add(new Column(Stores.name(index), run -> run.store(index)));
    }
  }
}
