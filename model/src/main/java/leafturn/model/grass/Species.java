package leafturn.model.grass;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The grasses a lawn may consist of. */
public enum Species {
  TALL_FESCUE("tall fescue", false, true),
  PERENNIAL_RYEGRASS("perennial ryegrass", false, true),
  KENTUCKY_BLUEGRASS("kentucky bluegrass", false, true),
  BERMUDAGRASS("bermudagrass", true, true),
  FINE_FESCUE("fine fescue", false, false),
  ANNUAL_BLUEGRASS("annual bluegrass", false, false),
  ZOYSIAGRASS("zoysiagrass", true, false),
  ST_AUGUSTINEGRASS("st. augustinegrass", true, false);

  private final String commonName;
  private final boolean warmSeason;
  private final boolean runAgainstStudies;

  Species(String commonName, boolean warmSeason, boolean runAgainstStudies) {
    this.commonName = commonName;
    this.warmSeason = warmSeason;
    this.runAgainstStudies = runAgainstStudies;
  }

  /** Common name in lower case, as in a lawn description. */
  public String commonName() {
    return commonName;
  }

  /** True for C4 grasses. */
  public boolean warmSeason() {
    return warmSeason;
  }

  /** True when this species' parameter set was run against published field studies. */
  public boolean runAgainstStudies() {
    return runAgainstStudies;
  }

  /** The species of a common name, whatever its case. */
  public static Optional<Species> named(String name) {
    String wanted = name.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(s -> s.commonName.equals(wanted)).findFirst();
  }

  /** All common names, for messages. */
  public static String names() {
    return Arrays.stream(values()).map(Species::commonName).collect(Collectors.joining(", "));
  }
}
