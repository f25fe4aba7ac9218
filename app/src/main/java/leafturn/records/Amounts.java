package leafturn.records;

import org.jspecify.annotations.Nullable;

/** Limits of what can be measured at or given to a lawn, the same in files and in the book. */
public final class Amounts {
  /** Lowest grass height, mm. */
  public static final double LOWEST_GRASS_MM = 3;

  /** Highest grass height, mm. */
  public static final double HIGHEST_GRASS_MM = 1000;

  /** Most of one element given at once, g/m2. */
  public static final double MOST_G_PER_M2 = 100;

  /** Most water given in a day, mm. */
  public static final double MOST_WATER_MM = 200;

  private Amounts() {}

  /** A height of the grass, mm, or null when it is missing or wrong. */
  public static @Nullable Double grassMm(JsonObject json, String name) {
    return json.number(name, LOWEST_GRASS_MM, HIGHEST_GRASS_MM, "mm");
  }

  /** An amount of an element, g/m2, or null when it is missing or wrong. */
  public static @Nullable Double gPerM2(JsonObject json, String name) {
    return json.number(name, 0, MOST_G_PER_M2, "g/m²");
  }
}
