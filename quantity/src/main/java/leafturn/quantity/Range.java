package leafturn.quantity;

/**
 * The values a quantity may take, both ends included, with the words a message needs.
 *
 * @param name what is bounded, as a person or a caller knows it, e.g. {@code airTemperatureC}
 * @param low smallest value allowed
 * @param high largest value allowed, not below {@code low}
 * @param unit unit of both, empty for a pure number
 */
public record Range(String name, double low, double high, String unit) {
  public Range {
    if (name.isBlank()) {
      throw new IllegalArgumentException("a range needs a name");
    }
    if (!(low <= high)) {
      throw new IllegalArgumentException(
          "the range of %s needs low <= high, but has %s and %s".formatted(name, low, high));
    }
  }

  /** True from {@code low} to {@code high}; false for NaN. */
  public boolean contains(double value) {
    return value >= low && value <= high;
  }

  /**
   * The value itself when it lies in the range.
   *
   * @throws IllegalArgumentException naming the quantity, its value and the range
   */
  public double checked(double value) {
    if (!contains(value)) {
      throw new IllegalArgumentException(fault(value));
    }
    return value;
  }

  /** One sentence that says what is wrong with a value outside the range. */
  public String fault(double value) {
    String unitPart = unit.isEmpty() ? "" : " " + unit;
    return "%s is %s%s, but must lie from %s to %s%s"
        .formatted(
            name,
            DisplayNumber.plain(value),
            Double.isNaN(value) ? "" : unitPart,
            DisplayNumber.plain(low),
            DisplayNumber.plain(high),
            unitPart);
  }
}
