package leafturn.records;

import java.util.List;
import java.util.stream.Collectors;

/** A file or an argument that cannot be used, with one sentence for each of its faults. */
public final class InputException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Faults.Fault> faults;

  private InputException(List<Faults.Fault> faults, String message) {
    super(message);
    if (faults.isEmpty()) {
      throw new IllegalArgumentException("an input exception needs at least one fault");
    }
    this.faults = List.copyOf(faults);
  }

  /**
   * @param faults one sentence each, at least one
   */
  public InputException(List<String> faults) {
    this(
        faults.stream().map(sentence -> new Faults.Fault("", sentence, sentence)).toList(),
        String.join("\n", faults));
  }

  /** An input with a single fault. */
  public InputException(String fault) {
    this(List.of(fault));
  }

  /** An input with faults that know their fields. */
  public static InputException of(List<Faults.Fault> faults) {
    return new InputException(
        faults, faults.stream().map(Faults.Fault::placed).collect(Collectors.joining("\n")));
  }

  /** One sentence for each fault: where it is, what is there, and what would be right. */
  public List<String> faults() {
    return faults.stream().map(Faults.Fault::placed).toList();
  }

  /** The faults with the fields they belong to. */
  public List<Faults.Fault> faultsByField() {
    return faults;
  }
}
