package leafturn.records.sheet;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How the entries of a day stand beside one another. */
public final class LogFit {
  /** Two readings of one sward differ by as much, mm; common practice, no source. */
  private static final double READINGS_DIFFER_MM = 10;

  private LogFit() {}

  /**
   * A mowing of the same day beside which an entry cannot stand: whichever came first, the grass
   * would have been higher before the second than after the first. Empty where all fit, and for
   * whatever is no mowing.
   *
   * @param others of the same lawn, without the entry itself
   */
  public static Optional<LogSheet> contradicted(LogSheet entry, List<LogSheet> others) {
    return entry.done() instanceof Done.Mown mown
        ? others.stream()
            .filter(other -> other.day().equals(entry.day()))
            .filter(other -> other.done() instanceof Done.Mown)
            .filter(other -> !fits(entry, mown, other, (Done.Mown) other.done()))
            .findFirst()
        : Optional.empty();
  }

  /**
   * Another entry of the same day that may tell of the same work, which would then count twice: a
   * mowing that may have been to the same height, whatever was told of its clippings, or other work
   * told alike but for the note. Empty where there is none, and for what was only seen, which does
   * not add up.
   *
   * @param others of the same lawn, without the entry itself
   */
  public static Optional<LogSheet> perhapsTheSame(LogSheet entry, List<LogSheet> others) {
    return entry.what() == What.OBSERVED
        ? Optional.empty()
        : others.stream()
            .filter(other -> other.day().equals(entry.day()))
            .filter(
                other ->
                    entry.done() instanceof Done.Mown mown
                            && other.done() instanceof Done.Mown before
                        ? mownAlike(entry, mown, other, before)
                        : entry.withoutNote().equals(other.withoutNote()))
            .findFirst();
  }

  private static boolean mownAlike(LogSheet one, Done.Mown mown, LogSheet other, Done.Mown before) {
    return mayBeEqual(one.time(), other.time())
        && mayBeEqual(mown.heightBeforeMm(), before.heightBeforeMm())
        && mayBeEqual(mown.heightAfterMm(), before.heightAfterMm());
  }

  /** Nobody is held to tell everything twice. */
  private static boolean mayBeEqual(@Nullable Object one, @Nullable Object other) {
    return one == null || other == null || one.equals(other);
  }

  private static boolean fits(LogSheet one, Done.Mown mown, LogSheet other, Done.Mown before) {
    LocalTime at = one.time();
    LocalTime otherAt = other.time();
    int order = at == null || otherAt == null ? 0 : at.compareTo(otherAt);
    boolean first = order <= 0;
    boolean second = order >= 0;
    return first && follows(mown, before) || second && follows(before, mown);
  }

  private static boolean follows(Done.Mown first, Done.Mown second) {
    Double most = known(first.heightAfterMm(), first.heightBeforeMm());
    Double least = known(second.heightBeforeMm(), second.heightAfterMm());
    return most == null || least == null || least <= most + READINGS_DIFFER_MM;
  }

  private static @Nullable Double known(@Nullable Double heightMm, @Nullable Double bound) {
    return heightMm == null ? bound : heightMm;
  }
}
