package leafturn.trials.design.layout;

/** What chance is drawn for; a number once given is never given again: 6 and 7 were. */
final class Purpose {
  static final long TREATMENTS = 1;
  static final long CORES = 2;
  static final long CODES = 3;
  static final long WALK = 4;
  static final long DUPLICATES = 5;

  private Purpose() {}
}
