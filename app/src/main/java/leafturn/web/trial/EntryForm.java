package leafturn.web.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leafturn.trials.design.Outcome;
import leafturn.trials.observation.ObservedPlot;
import leafturn.trials.observation.Reading;
import leafturn.trials.observation.ReadingValue;
import leafturn.web.form.Field;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;
import leafturn.web.form.FormShape.Group;
import org.jspecify.annotations.Nullable;

/** The form in which the readings of a day and outcome are entered, plot by plot. */
public final class EntryForm {
  /** Who rated. */
  public static final String RATER = "rater";

  private static final String UNIT = "unit";
  private static final String NOTE = "note";

  private final Outcome outcome;
  private final List<ObservedPlot> walk;
  private final boolean blind;

  /**
   * @param walk the plots in the order of the walk
   * @param blind whether the arms are not to be shown
   */
  public EntryForm(Outcome outcome, List<ObservedPlot> walk, boolean blind) {
    this.outcome = outcome;
    this.walk = List.copyOf(walk);
    this.blind = blind;
  }

  /** The field of a plot. */
  public static String path(String plot) {
    return "plot-" + plot;
  }

  /** The fields: rater and unit, then the plots unit by unit as they are walked. */
  public FormShape shape() {
    List<Group> groups = new ArrayList<>();
    boolean rating = outcome.kind() == Outcome.Kind.RATING;
    List<Field> first = new ArrayList<>();
    first.add(rating ? Field.text(RATER, "Rater").needed() : Field.text(RATER, "Measured by"));
    if (!rating) {
      first.add(
          Field.text(UNIT, "Unit")
              .hint("Left empty: %s, as the plan has it.".formatted(outcome.unit())));
    }
    groups.add(new Group("", "", first));
    String unit = "";
    List<Field> fields = new ArrayList<>();
    for (ObservedPlot plot : walk) {
      if (!plot.unit().equals(unit)) {
        add(groups, unit, fields);
        unit = plot.unit();
        fields = new ArrayList<>();
      }
      fields.add(field(plot, rating));
    }
    add(groups, unit, fields);
    groups.add(new Group("", "", List.of(Field.longText(NOTE, "Note"))));
    return new FormShape(groups);
  }

  private static void add(List<Group> groups, String unit, List<Field> fields) {
    if (!fields.isEmpty()) {
      groups.add(new Group(unit, "", fields, true));
    }
  }

  private Field field(ObservedPlot plot, boolean rating) {
    String label = blind ? plot.code() : "%s, %s".formatted(plot.code(), plot.arm());
    return rating
        ? Field.number(path(plot.code()), label, outcome.unit())
        : Field.text(path(plot.code()), label);
  }

  /** What was filled in. */
  public List<Reading> readings(Form form, LocalDate date) {
    List<Reading> readings = new ArrayList<>();
    String unit = form.value(UNIT).isEmpty() ? outcome.unit() : form.value(UNIT);
    for (ObservedPlot plot : walk) {
      String value = ReadingValue.withPoint(form.value(path(plot.code())));
      if (!value.isEmpty()) {
        readings.add(
            new Reading(
                plot.code(),
                date,
                outcome.name(),
                value,
                unit,
                null,
                null,
                null,
                null,
                orNull(form.value(RATER)),
                null,
                null,
                null));
      }
    }
    return readings;
  }

  private static @Nullable String orNull(String text) {
    return text.isEmpty() ? null : text;
  }
}
