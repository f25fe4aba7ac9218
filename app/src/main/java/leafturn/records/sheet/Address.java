package leafturn.records.sheet;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import leafturn.records.Faults;
import leafturn.records.JsonObject;

/** Names in addresses: lower-case letters, digits and single hyphens, at most 80 characters. */
public final class Address {
  private static final Pattern SHAPE = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  /** The address under which new places are begun. */
  private static final String RESERVED = "new";

  private static final int MOST_TRIES = 1000;

  private Address() {}

  /** The address made from names, for instance "heron-bank-play-lawn"; never empty. */
  public static String of(String... names) {
    String plain =
        Normalizer.normalize(String.join(" ", names), Normalizer.Form.NFD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}", "")
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-|-$", "");
    String cut = plain.substring(0, Math.min(plain.length(), Limits.NAME)).replaceAll("-$", "");
    return cut.isEmpty() || cut.equals(RESERVED) ? "place" : cut;
  }

  /** The address of names, with a number where it is taken. */
  public static String free(Predicate<String> taken, String... names) {
    String address = of(names);
    for (int number = 2; taken.test(address) && number < MOST_TRIES; number++) {
      List<String> numbered = new ArrayList<>(List.of(names));
      numbered.add(Integer.toString(number));
      address = of(numbered.toArray(String[]::new));
    }
    return address;
  }

  /** Reads the field {@code address}; empty where a fault was reported. */
  static String read(JsonObject json) {
    String address = json.requiredText("address", Limits.NAME, "a short name for addresses");
    if (address.equals(RESERVED)) {
      json.fault("address", "\"new\" is where new ones are begun; take another.");
    } else if (!address.isEmpty() && !SHAPE.matcher(address).matches()) {
      json.fault(
          "address",
          Faults.quoted(address) + " is not usable; take lower-case letters, digits and hyphens.");
    }
    return address;
  }
}
