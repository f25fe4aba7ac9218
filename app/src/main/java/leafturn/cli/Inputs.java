package leafturn.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import leafturn.records.InputException;

/** Reads several inputs and reports the faults of all of them at once. */
final class Inputs {
  private final List<String> faults = new ArrayList<>();

  /** Reads one input; empty when it has faults. */
  <T> Optional<T> read(Supplier<T> reading) {
    try {
      return Optional.of(reading.get());
    } catch (InputException wrong) {
      faults.addAll(wrong.faults());
      return Optional.empty();
    }
  }

  /**
   * @throws InputException with the faults of all inputs read so far, if there are any
   */
  void throwIfAny() {
    if (!faults.isEmpty()) {
      throw new InputException(faults);
    }
  }
}
