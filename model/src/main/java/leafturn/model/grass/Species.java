package leafturn.model.grass;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The grasses a lawn may consist of. */
public enum Species {
  TALL_FESCUE("tall fescue", false, true, 50),
  PERENNIAL_RYEGRASS("perennial ryegrass", false, true, 38),
  KENTUCKY_BLUEGRASS("kentucky bluegrass", false, true, 38),
  BERMUDAGRASS("bermudagrass", true, true, 13),
  FINE_FESCUE("fine fescue", false, false, 50),
  ANNUAL_BLUEGRASS("annual bluegrass", false, false, 25),
  ZOYSIAGRASS("zoysiagrass", true, false, 13),
  ST_AUGUSTINEGRASS("st. augustinegrass", true, false, 64);

  private final String commonName;
  private final boolean warmSeason;
  private final boolean runAgainstStudies;
  private final double lowestHeightMm;

  Species(String commonName, boolean warmSeason, boolean runAgainstStudies, double lowestHeightMm) {
    this.commonName = commonName;
    this.warmSeason = warmSeason;
    this.runAgainstStudies = runAgainstStudies;
    this.lowestHeightMm = lowestHeightMm;
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

  /**
   * Lowest height at which home lawns of it are kept, mm. Oregon State, Oklahoma State, Kentucky
   * and Texas A&M extension and Sorochan 2014, in steps of half an inch; annual bluegrass is our
   * judgement.
   */
  public double lowestHeightMm() {
    return lowestHeightMm;
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
