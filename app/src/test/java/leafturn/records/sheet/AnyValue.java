package leafturn.records.sheet;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Random values of the kinds that sheets hold; the seed decides everything. */
final class AnyValue {
  private static final String[] WORDS = {
    "Heron Bank", "front lawn", "clover & moss", "\"quoted\"", "Gärten", "草", "<b>", "it's", "a, b;"
  };
  private static final long FIRST_DAY = LocalDate.of(1990, 1, 1).toEpochDay();
  private static final long LAST_DAY = LocalDate.of(2030, 12, 31).toEpochDay();

  private final SplittableRandom random;

  AnyValue(long seed) {
    this.random = new SplittableRandom(seed);
  }

  boolean yes() {
    return random.nextBoolean();
  }

  /** The value, or null half of the time. */
  <T> @Nullable T maybe(Supplier<T> value) {
    return random.nextBoolean() ? value.get() : null;
  }

  int whole(int low, int high) {
    return random.nextInt(low, high + 1);
  }

  /** A number within limits, now and then a limit itself. */
  double number(double low, double high) {
    return switch (random.nextInt(10)) {
      case 0 -> low;
      case 1 -> high;
      default -> low + random.nextDouble() * (high - low);
    };
  }

  String text() {
    return WORDS[random.nextInt(WORDS.length)] + " " + random.nextInt(1000);
  }

  String note() {
    return text() + ".\nAnd " + text() + ".";
  }

  /** An address that hardly repeats, since addresses are unique in a book. */
  String address() {
    return Address.of("place", Long.toHexString(random.nextLong()));
  }

  String id() {
    return new UUID(random.nextLong(), random.nextLong()).toString();
  }

  LocalDate day() {
    return LocalDate.ofEpochDay(random.nextLong(FIRST_DAY, LAST_DAY + 1));
  }

  LocalTime time() {
    return LocalTime.of(random.nextInt(24), random.nextInt(60));
  }

  <T> T one(List<T> values) {
    return values.get(random.nextInt(values.size()));
  }

  <E extends Enum<E>> E one(Class<E> type) {
    return one(Arrays.asList(type.getEnumConstants()));
  }

  /** Some different constants in any order, perhaps none. */
  <E extends Enum<E>> List<E> some(Class<E> type) {
    List<E> all = new ArrayList<>(Arrays.asList(type.getEnumConstants()));
    Collections.shuffle(all, new java.util.Random(random.nextLong()));
    return List.copyOf(all.subList(0, random.nextInt(all.size() + 1)));
  }

  <T> List<T> list(int most, Supplier<T> value) {
    return list(0, most, value);
  }

  <T> List<T> list(int least, int most, Supplier<T> value) {
    List<T> values = new ArrayList<>();
    int size = whole(least, most);
    for (int i = 0; i < size; i++) {
      values.add(value.get());
    }
    return values;
  }
}
