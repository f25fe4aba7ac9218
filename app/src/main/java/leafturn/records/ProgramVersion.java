package leafturn.records;

/** The version of this program, as the build wrote it down. */
public final class ProgramVersion {
  private static final String RESOURCE = "/leafturn/cli/version.txt";

  private ProgramVersion() {}

  /** For instance "leafturn 0.1.0". */
  public static String name() {
    return "leafturn " + SourceText.ofResource(RESOURCE).text().strip();
  }
}
