package leafturn.records.sheet;

/** What people want of their lawn. */
public enum Aim {
  TIDY,
  LEAST_WORK,
  PLAY,
  WILDLIFE,
  SAVING_WATER,
  NO_PESTICIDES,
  FEEDING_BEDS,
  /** Nothing is to be carried into the house on shoes and paws. */
  NO_CLIPPINGS_INDOORS
}
