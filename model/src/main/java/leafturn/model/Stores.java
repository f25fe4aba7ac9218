package leafturn.model;

/**
 * Layout of a lawn's state: one {@code double[COUNT]} per lawn, per m2. Each element stands in one
 * block, so that its stock is the sum over the block. Carbon in g C (dry matter is C over the C
 * fraction), N, P and K in g, water in mm. The plant has one N, one P and one K store shared by
 * leaf, stubble and root through fixed relative concentrations.
 */
public final class Stores {
  /** First index of the carbon block; a block ends where the next begins. */
  public static final int CARBON = 0;

  /** Leaf above the cut height. */
  public static final int LEAF_C = 0;

  /** Stubble, stems, crowns and rhizomes. */
  public static final int STUBBLE_C = 1;

  public static final int ROOT_C = 2;

  /** Returned clippings, fast part: the first of the decaying pools, which follow one another. */
  public static final int METABOLIC_C = 3;

  /** Returned clippings, slow part. */
  public static final int STRUCTURAL_C = 4;

  /** Thatch from clippings. */
  public static final int CLIPPING_THATCH_C = 5;

  /** Thatch from stubble. */
  public static final int THATCH_C = 6;

  /** Dead roots, dead leaf and the rest of dead stubble: the last of the decaying pools. */
  public static final int FRESH_C = 7;

  public static final int MICROBE_C = 8;
  public static final int HUMUS_C = 9;

  public static final int NITROGEN = 10;
  public static final int PLANT_N = 10;
  public static final int METABOLIC_N = 11;
  public static final int STRUCTURAL_N = 12;
  public static final int CLIPPING_THATCH_N = 13;
  public static final int THATCH_N = 14;
  public static final int FRESH_N = 15;
  public static final int MICROBE_N = 16;
  public static final int HUMUS_N = 17;
  public static final int AMMONIUM_N = 18;
  public static final int NITRATE_N = 19;

  /** Fertiliser not yet dissolved, fast. */
  public static final int FAST_FERTILISER_N = 20;

  /** Fertiliser not yet released, slow. */
  public static final int SLOW_FERTILISER_N = 21;

  public static final int PHOSPHORUS = 22;
  public static final int PLANT_P = 22;
  public static final int METABOLIC_P = 23;
  public static final int STRUCTURAL_P = 24;
  public static final int CLIPPING_THATCH_P = 25;
  public static final int THATCH_P = 26;
  public static final int FRESH_P = 27;
  public static final int HUMUS_P = 28;
  public static final int SOIL_P = 29;

  public static final int POTASSIUM = 30;
  public static final int PLANT_K = 30;

  /** K in returned clippings. */
  public static final int LITTER_K = 31;

  public static final int SOIL_K = 32;

  public static final int WATER = 33;

  /** Water missing from the root zone to field capacity, mm. */
  public static final int DEPLETION_MM = 33;

  /** Demand saved up by the irrigation programme, mm; an account, not a stock. */
  public static final int IRRIGATION_ACCOUNT_MM = 34;

  public static final int DAYS_SINCE_MOWING = 35;

  /** Height below which leaf counts as stubble, mm. */
  public static final int CUT_HEIGHT_MM = 36;

  /**
   * Mean age of the leaf above the cut height, days at 20 °C; kept only where each cut has its own
   * quality.
   */
  public static final int LEAF_AGE_DAYS = 37;

  /** Length of the array. */
  public static final int COUNT = 38;

  /** Number of pools that decay through microbes, from fast clippings to fresh soil matter. */
  public static final int DECAYING = 5;

  /** The first of the decaying pools are clippings. */
  public static final int DECAYING_CLIPPINGS = 2;

  private static final String[] NAMES = {
    "C_leaf", "C_stub", "C_root", "C_lm", "C_ls", "C_thc", "C_th", "C_fo", "C_mb", "C_so",
    "N_plant", "N_lm", "N_ls", "N_thc", "N_th", "N_fo", "N_mb", "N_so", "N_nh4", "N_no3", "N_ff",
    "N_fs", "P_plant", "P_lm", "P_ls", "P_thc", "P_th", "P_fo", "P_so", "P_soil", "K_plant",
    "K_lit", "K_soil", "Dr", "irrA", "since", "Hc", "leafAge"
  };

  private Stores() {}

  /** Name of a store in tables and messages: element and short name, for instance N_plant. */
  public static String name(int store) {
    return NAMES[store];
  }

  /** Sum of the stores from one index to before another. */
  public static double sum(double[] stores, int from, int to) {
    double sum = 0;
    for (int store = from; store < to; store++) {
      sum += stores[store];
    }
    return sum;
  }
}
