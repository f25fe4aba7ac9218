package leafturn.web;

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

/** The form that asks for a season plan, with room for a programme of one's own. */
final class SeasonForm {
  private static final String OWN = "programmes[0].";

  private SeasonForm() {}

  /**
   * @param third largest share of the height that one cut should take, in words
   */
  static FormShape shape(Units units, String third) {
    String kept = units == Units.US ? "Share of clippings left" : "Share of clippings returned";
    Field search =
        Field.oneOf(
            "search",
            "Programmes tried",
            List.of(
                new Choice("true", "That of now, and 300 or more round it"),
                new Choice("false", "That of now, and my own below")));
    return new FormShape(
        List.of(
            new Group("", "", List.of(search)),
            new Group(
                "A programme of your own",
                "Compared beside that of now and the search. Leave the name empty for none; what is left empty is as the lawn is kept now.",
                List.of(
                    Field.text(OWN + "name", "Name"),
                    Field.number(OWN + "mowing.heightMm", "Cut height", Measure.HEIGHT),
                    month("june"),
                    month("july"),
                    month("august"),
                    Field.number(OWN + "mowing.trigger.everyDays", "Mown every so many days", ""),
                    Field.flag(
                            OWN + "mowing.trigger.oneThird",
                            "Mown when %s would come off".formatted(third))
                        .hint("One of the two, not both."),
                    Field.number(OWN + "mowing.clippings.returnedShare", kept, "")
                        .hint("From 0, none, to 1, all of them."),
                    Field.flag(OWN + "mowing.clippings.byRules", "Clippings by the rules")
                        .hint("Decided at each mowing; leave the share empty then."),
                    Field.number(
                            OWN + "irrigation.shareOfDemand", "Share of its water need given", "")
                        .hint("From 0 to 1.5; 1: all that it would use.")))));
  }

  /** A month in which grass is often left higher. */
  private static Field month(String name) {
    return Field.number(
        OWN + "mowing.heightMmByMonth." + name,
        "Cut height in " + ProgrammeWords.capital(name),
        Measure.HEIGHT);
  }

  /** The form before anything is entered. */
  static Form blank(Units units, String third) {
    return Form.blank(shape(units, third), units).with("search", "true");
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
