package leafturn.advice.season;

/** What a plan reports of each possible season, per m2. */
enum Yearly {
  MOWINGS,
  IRRIGATION_MM,
  LEAF_GROWTH_G,
  COLLECTED_G,
  KEPT_N,
  KEPT_P,
  KEPT_K,
  LEACHED_N,
  CLUMP_MOWINGS,
  THIRD_RULE_BROKEN
}
