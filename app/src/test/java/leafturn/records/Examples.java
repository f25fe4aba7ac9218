package leafturn.records;

import java.nio.file.Path;

/** The example files of the documentation, which the tests read. */
public final class Examples {
  private static final Path FOLDER = Path.of("..", "docs", "examples");

  private Examples() {}

  /** Path of an example file. */
  public static Path file(String name) {
    return FOLDER.resolve(name);
  }

  /** Text of an example file. */
  public static SourceText text(String name) {
    return SourceText.read(file(name), 50_000_000);
  }

  /** The faults of a reading that must fail. */
  static java.util.List<String> faultsOf(Runnable reading) {
    try {
      reading.run();
    } catch (InputException e) {
      return e.faults();
    }
    throw new AssertionError("this was read without a fault");
  }
}
