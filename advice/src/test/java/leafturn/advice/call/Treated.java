package leafturn.advice.call;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is known of lawns that were treated with a product. */
final class Treated {
  private Treated() {}

  /**
   * With a broad-leaf herbicide whose label asks for three mowings before clippings are used.
   *
   * @param waitDays days that the label asks to wait before mowing, or null where it does not say
   */
  static Circumstances withHerbicide(LocalDate on, @Nullable Integer waitDays) {
    return with(
        on,
        "a broad-leaf herbicide",
        Treatment.Kind.HERBICIDE,
        Treatment.Group.OTHER,
        new Treatment.Label(3, null, false, waitDays, true));
  }

  static Circumstances withClopyralid(LocalDate on, Treatment.Label label) {
    return with(on, "clopyralid", Treatment.Kind.HERBICIDE, Treatment.Group.PYRIDINE_ACID, label);
  }

  static Circumstances withInsecticide(LocalDate on) {
    return with(
        on,
        "an insecticide",
        Treatment.Kind.INSECTICIDE,
        Treatment.Group.NOT_KNOWN,
        Treatment.Label.UNREAD);
  }

  private static Circumstances with(
      LocalDate on,
      String product,
      Treatment.Kind kind,
      Treatment.Group group,
      Treatment.Label label) {
    return Circumstances.NONE.withTreatments(
        List.of(new Treatment(on, product, kind, group, label)));
  }
}
