package leafturn.records;

import java.util.List;

/** A file or an argument that cannot be used, with one sentence for each of its faults. */
public final class InputException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final List<String> faults;

  /**
   * @param faults one sentence each, at least one
   */
  public InputException(List<String> faults) {
    super(String.join("\n", faults));
    if (faults.isEmpty()) {
      throw new IllegalArgumentException("an input exception needs at least one fault");
    }
    this.faults = List.copyOf(faults);
  }

  /** An input with a single fault. */
  public InputException(String fault) {
    this(List.of(fault));
  }

  /** One sentence for each fault: where it is, what is there, and what would be right. */
  public List<String> faults() {
    return faults;
  }
}
