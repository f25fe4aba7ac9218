package leafturn.model;

/**
 * Layout of a day's flows and read-outs: one {@code double[COUNT]}, per m2 and day. The boundary
 * flows stand first, element by element, what enters before what leaves; {@link #BOUNDARY} of them
 * are summed up over a run. All are positive amounts, except corrections, which carry a sign.
 */
public final class Flows {
  public static final int PHOTOSYNTHESIS_C = 0;

  /** Carbon a measured height added to the leaf; negative where it took some away. */
  public static final int CORRECTION_C = 1;

  public static final int RESPIRED_C = 2;
  public static final int COLLECTED_C = 3;

  public static final int FERTILISER_N = 4;
  public static final int DEPOSITION_N = 5;
  public static final int CORRECTION_N = 6;
  public static final int COLLECTED_N = 7;
  public static final int VOLATILISED_N = 8;
  public static final int DENITRIFIED_N = 9;
  public static final int LEACHED_N = 10;

  public static final int FERTILISER_P = 11;
  public static final int CORRECTION_P = 12;
  public static final int COLLECTED_P = 13;
  public static final int LEACHED_P = 14;

  public static final int FERTILISER_K = 15;
  public static final int CORRECTION_K = 16;
  public static final int COLLECTED_K = 17;
  public static final int LEACHED_K = 18;

  public static final int RAIN_MM = 19;
  public static final int IRRIGATION_MM = 20;
  public static final int EVAPOTRANSPIRATION_MM = 21;
  public static final int DRAINAGE_MM = 22;
  public static final int RUNOFF_MM = 23;

  /** Clippings handled by the mower, returned or not, g dry matter. */
  public static final int CLIPPINGS_G = 24;

  public static final int CLIPPINGS_N = 25;

  /** Of these, returned on purpose; what the mower misses is not counted. */
  public static final int RETURNED_G = 26;

  public static final int RETURNED_N = 27;
  public static final int MOWINGS = 28;

  /** N taken up by the grass. */
  public static final int UPTAKE_N = 29;

  /** Leaf growth, g dry matter. */
  public static final int LEAF_GROWTH_G = 30;

  /** Growth of leaf, stubble and root, g dry matter. */
  public static final int GROWTH_G = 31;

  /** Number of flows that are summed up over a run. */
  public static final int BOUNDARY = 32;

  public static final int REFERENCE_ET_MM = 32;

  /** Water in the root zone over its capacity after the day's water step, 0-1. */
  public static final int ROOT_ZONE_WATER = 33;

  /** Water stress of grass, 1 without stress. */
  public static final int WATER_STRESS = 34;

  /** Moisture factor of decay. */
  public static final int DECAY_MOISTURE = 35;

  /** Moisture factor of growth. */
  public static final int GROWTH_MOISTURE = 36;

  /** Temperature factor of growth. */
  public static final int GROWTH_TEMPERATURE = 37;

  /** Nitrogen factor of growth. */
  public static final int GROWTH_NITROGEN = 38;

  /** Factor of growth under undecayed clippings, 1 without smothering. */
  public static final int SMOTHERING = 39;

  /** N fraction of the leaf after the day's growth, also that of its clippings. */
  public static final int LEAF_N_FRACTION = 40;

  /** Height before any mowing of the day, mm. */
  public static final int HEIGHT_BEFORE_MM = 41;

  /** Share of the demand of decay that mineral N could meet, 0-1. */
  public static final int DECAY_SCALE = 42;

  /** Unscaled share of the fast clippings' carbon that decayed. */
  public static final int METABOLIC_LOST_FRACTION = 43;

  /** Share of the clippings returned in the day's mowing. */
  public static final int RETURNED_SHARE = 44;

  public static final int FAST_TO_AMMONIUM_N = 45;
  public static final int FAST_VOLATILISED_N = 46;
  public static final int SLOW_TO_AMMONIUM_N = 47;
  public static final int FAST_FED_N = 48;

  /** Carbon lost by each of the five decaying pools, in the order of {@link Stores}. */
  public static final int DECAYED_C = 49;

  /** N lost by each of the five decaying pools. */
  public static final int DECAYED_N = 54;

  /** N that each of the five pools gave to microbes. */
  public static final int TO_MICROBES_N = 59;

  /** N that microbes took from ammonium for each of the five pools. */
  public static final int AMMONIUM_TIED_UP_N = 64;

  /** N that microbes took from nitrate for each of the five pools. */
  public static final int NITRATE_TIED_UP_N = 69;

  /** N volatilised from each of the five pools. */
  public static final int DECAY_VOLATILISED_N = 74;

  public static final int INCORPORATED_N = 79;
  public static final int MICROBES_TO_HUMUS_N = 80;
  public static final int MICROBES_TO_AMMONIUM_N = 81;
  public static final int HUMUS_TO_AMMONIUM_N = 82;
  public static final int NITRIFIED_N = 83;
  public static final int PLANT_TO_THATCH_N = 84;
  public static final int PLANT_TO_FRESH_N = 85;
  public static final int AMMONIUM_UPTAKE_N = 86;
  public static final int TO_METABOLIC_N = 87;
  public static final int TO_STRUCTURAL_N = 88;

  /** Share of its carbon that each of the five decaying pools would lose if N allowed. */
  public static final int DECAY_FRACTION = 89;

  /** Share of the day's clippings in the fast pool. */
  public static final int CUT_FAST_FRACTION = 94;

  /** N fraction of the day's clippings over that of the leaf. */
  public static final int CUT_N_FACTOR = 95;

  /** N fraction of the day's clippings. */
  public static final int CUT_N_FRACTION = 96;

  /** Lignin of the day's clippings, g/g; 0 where all cuts are of one kind. */
  public static final int CUT_LIGNIN_FRACTION = 97;

  /** Mean age of the leaf that was cut, days at 20 °C. */
  public static final int CUT_LEAF_AGE_DAYS = 98;

  /** Length of the pieces, mm. */
  public static final int CUT_LENGTH_MM = 99;

  /** Share of seed stalks in the day's clippings. */
  public static final int CUT_STALK_FRACTION = 100;

  /** Length of the array. */
  public static final int COUNT = 101;

  private Flows() {}
}
