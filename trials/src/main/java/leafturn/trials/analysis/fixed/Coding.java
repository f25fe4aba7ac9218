package leafturn.trials.analysis.fixed;

/** How the levels of a factor become columns of numbers. */
public enum Coding {
  /** The difference from the first level. */
  TREATMENT {
    @Override
    double value(int level, int column, int levels) {
      return level == column + 1 ? 1 : 0;
    }
  },
  /** The difference from the mean of all levels. */
  SUM_TO_ZERO {
    @Override
    double value(int level, int column, int levels) {
      if (level == levels - 1) {
        return -1;
      }
      return level == column ? 1 : 0;
    }
  },
  /** A column for each level. */
  FULL {
    @Override
    double value(int level, int column, int levels) {
      return level == column ? 1 : 0;
    }
  };

  abstract double value(int level, int column, int levels);

  int columns(int levels) {
    return this == FULL ? levels : levels - 1;
  }

  int levelOf(int column) {
    return this == TREATMENT ? column + 1 : column;
  }
}
