package leafturn.web;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import leafturn.model.lawn.Programme;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.ProgrammesFile;
import leafturn.records.ProgrammesFile.Programmes;
import leafturn.reports.plan.ProgrammeWords;
import leafturn.web.form.Field;
import leafturn.web.form.Field.Choice;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;
import leafturn.web.form.FormShape.Group;
import leafturn.web.sheet.ProgrammeForm;

/** The form that asks for a season plan, with room for a programme of one's own. */
final class SeasonForm {
  private static final String OWN = "programmes[0].";
  private static final String FEED = "A feed plan of its own";
  private static final List<Month> SUMMER = List.of(Month.JUNE, Month.JULY, Month.AUGUST);
  private static final int HALF_A_YEAR = 6;

  private SeasonForm() {}

  /**
   * @param third largest share of the height that one cut should take, in words
   * @param southern true for a lawn south of the equator, whose summer is in other months
   */
  static FormShape shape(Units units, String third, boolean southern) {
    String kept = units == Units.US ? "Share of clippings left" : "Share of clippings returned";
    Field search =
        Field.oneOf(
            "search",
            "Programmes tried",
            List.of(
                new Choice("true", "That of now, and 300 or more round it"),
                new Choice("false", "That of now, and my own below")));
    List<Field> fields = new ArrayList<>();
    fields.add(Field.text(OWN + "name", "Name"));
    fields.add(Field.number(OWN + "mowing.heightMm", "Cut height", Measure.HEIGHT));
    SUMMER.forEach(month -> fields.add(height(southern ? month.plus(HALF_A_YEAR) : month)));
    fields.addAll(
        List.of(
            Field.number(OWN + "mowing.trigger.everyDays", "Mown every so many days", ""),
            Field.flag(
                    OWN + "mowing.trigger.oneThird", "Mown when %s would come off".formatted(third))
                .hint("One of the two, not both."),
            Field.number(OWN + "mowing.clippings.returnedShare", kept, "")
                .hint("From 0, none, to 1, all of them."),
            Field.flag(OWN + "mowing.clippings.byRules", "Clippings by the rules")
                .hint("Decided at each mowing; leave the share empty then."),
            Field.number(OWN + "irrigation.shareOfDemand", "Share of its water need given", "")
                .hint("From 0 to 1.5; 1: all that it would use.")));
    List<Group> groups = new ArrayList<>();
    groups.add(new Group("", "", List.of(search)));
    groups.add(
        new Group(
            "A programme of your own",
            "Compared beside that of now and the search. Leave the name empty for none; what is left empty is as the lawn is kept now.",
            fields));
    groups.add(
        new Group(
                "Its feed",
                ProgrammeForm.FEEDING
                    + " All rows left empty: fed as now. One row with a day alone: not fed at all.",
                List.of())
            .folded(FEED));
    for (int row = 0; row < ProgrammeForm.FEEDS; row++) {
      groups.add(ProgrammeForm.feed(OWN + "feeding", row, false).folded(FEED));
    }
    return new FormShape(groups);
  }

  /** A month in which grass is often left higher. */
  private static Field height(Month month) {
    String name = leafturn.records.Choice.word(month);
    return Field.number(
        OWN + "mowing.heightMmByMonth." + name,
        "Cut height in " + ProgrammeWords.capital(name),
        Measure.HEIGHT);
  }

  /** The form before anything is entered. */
  static Form blank(FormShape shape, Units units) {
    return Form.blank(shape, units).with("search", "true");
  }

  /**
   * The programmes that were asked for.
   *
   * @throws leafturn.records.InputException with one sentence for each fault
   */
  static Programmes read(Form form, Programme present) {
    return ProgrammesFile.read(form.document("the programme"), present);
  }
}
