package leafturn.model.lawn;

import java.time.LocalDate;

/** Something that was done to a lawn on a day. */
public sealed interface LogEntry {
  /** The day it was done. */
  LocalDate day();

  /**
   * A mowing.
   *
   * @param heightBeforeMm measured grass height before the cut, mm, or NaN when not measured
   * @param heightAfterMm height it was cut to, mm, or NaN for the programme's cut height
   * @param returnedShare share of the clippings returned, 0 to 1
   */
  record Mown(LocalDate day, double heightBeforeMm, double heightAfterMm, double returnedShare)
      implements LogEntry {
    public Mown {
      if (!(returnedShare >= 0 && returnedShare <= 1)) {
        throw new IllegalArgumentException(
            "the returned share is " + returnedShare + ", but must lie from 0 to 1");
      }
      if (heightAfterMm > heightBeforeMm) {
        throw new IllegalArgumentException(
            "the height after mowing (%s mm) is above the height before (%s mm)"
                .formatted(heightAfterMm, heightBeforeMm));
      }
    }
  }

  /** Fertiliser, elements in g/m2. */
  record Fed(LocalDate day, double fastNGPerM2, double slowNGPerM2, double pGPerM2, double kGPerM2)
      implements LogEntry {}

  /** Watering by hand or sprinkler, mm. */
  record Watered(LocalDate day, double waterMm) implements LogEntry {}

  /**
   * Grass height measured without mowing.
   *
   * @param heightMm measured grass height, mm, positive
   * @param atVisit true when an adviser's visit measured it, and not who keeps the log
   */
  record Measured(LocalDate day, double heightMm, boolean atVisit) implements LogEntry {
    /** A height of the log. */
    public Measured(LocalDate day, double heightMm) {
      this(day, heightMm, false);
    }

    public Measured {
      if (!(heightMm > 0)) {
        throw new IllegalArgumentException(
            "a measured height must be positive, but is " + heightMm);
      }
    }
  }
}
