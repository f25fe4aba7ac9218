package leafturn.trials.analysis.data;

import java.util.List;

/** Data or a model that cannot be analysed: a sentence for each fault. */
public final class TrialFaultException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final List<String> faults;

  /** One or more sentences that say what is wrong, where, and what would be right. */
  public TrialFaultException(List<String> faults) {
    super(String.join(" ", faults));
    this.faults = List.copyOf(faults);
  }

  /** A single fault. */
  public TrialFaultException(String fault) {
    this(List.of(fault));
  }

  /** The sentences, in the order in which the faults were met. */
  public List<String> faults() {
    return faults;
  }
}
