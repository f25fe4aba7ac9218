package leafturn.records.sheet;

/** Whether annual bluegrass grows in a lawn, and whether anybody minds. */
public enum AnnualBluegrass {
  NONE,
  THERE,
  UNWANTED
}
