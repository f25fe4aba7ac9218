package leafturn.advice.call;

import java.time.LocalDate;
import java.util.List;

/**
 * How a lawn grew against what was expected of it, as far as heights were logged after cuts that
 * were logged too.
 *
 * @param factor what the lawn's growth is reckoned with, over that of its description; 1 where no
 *     height was logged
 * @param measured heights that tell of it
 * @param past heights that were expected and found, the latest few in order
 */
public record OwnGrowth(Spread factor, int measured, List<PastHeight> past) {
  /** No height was logged. */
  public static final OwnGrowth UNMEASURED = new OwnGrowth(Spread.exactly(1), 0, List.of());

  public OwnGrowth {
    past = List.copyOf(past);
  }

  /**
   * A height that was logged.
   *
   * @param day of the reading
   * @param expectedMm what was to be expected of a reading, from the last cut or reading on with
   *     the weather that came and what was known of the lawn's growth until then, mm
   * @param measuredMm what was logged, mm
   */
  public record PastHeight(LocalDate day, Spread expectedMm, double measuredMm) {
    /** True when the reading lay in the range, as eight out of ten should. */
    public boolean within() {
      return measuredMm >= expectedMm.low() && measuredMm <= expectedMm.high();
    }
  }
}
