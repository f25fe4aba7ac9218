package leafturn.web.sheet;

import java.util.List;
import java.util.Optional;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;

/** The forms of all kinds of sheets. */
public final class SheetForms {
  private static final List<SheetForm<?>> ALL =
      List.of(
          new PropertyForm(),
          new LawnForm(),
          new ProgrammeForm(),
          new BedForm(),
          new HeapForm(),
          new StationForm(),
          new ForecastForm(),
          new IntakeForm(),
          new VisitForm(),
          new SoilTestForm(),
          new ThatchForm(),
          new LogForm(),
          new PhotographForm(),
          new RuleForm());

  private SheetForms() {}

  /** The form of a kind. */
  public static <C extends Content> SheetForm<C> of(Kind<C> kind) {
    for (SheetForm<?> form : ALL) {
      if (form.kind() == kind) {
        @SuppressWarnings("unchecked") // the form of a kind has its content
        SheetForm<C> found = (SheetForm<C>) form;
        return found;
      }
    }
    throw new IllegalArgumentException("there is no form for the kind " + kind);
  }

  /** The form of the kind with this name, if there is such a kind. */
  public static Optional<SheetForm<?>> named(String kind) {
    return ALL.stream().filter(form -> form.kind().name().equals(kind)).findFirst();
  }
}
