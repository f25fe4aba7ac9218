package leafturn.records.sheet;

/** Lengths that texts of a sheet may have, characters. */
public final class Limits {
  /** Names of places, people and products. */
  public static final int NAME = 80;

  /** A sentence. */
  public static final int SENTENCE = 300;

  /** Remarks. */
  public static final int NOTE = 4000;

  private Limits() {}
}
