package leafturn.web.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DayOfWeek;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import leafturn.model.lawn.CalendarDay;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.MowingsAYear;
import leafturn.records.UsualSeason;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.ProgrammeSheet;
import leafturn.reports.DayWords;
import leafturn.web.form.Field;
import leafturn.web.form.Field.Choice;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;
import leafturn.web.form.FormShape.Group;

/** What is done to a lawn, as it is entered. */
public final class ProgrammeForm extends SheetForm<ProgrammeSheet> {
  private static final String MONTH_DAY = "Month and day, for instance 05-20.";

  /** What a person should know of the rows of feed. */
  public static final String FEEDING =
      "Every year on the same days, each with its month and day, for instance 05-20, and as"
          + " elements: a label tells shares of P2O5 and K2O, of which 44 % is P and 83 % K.";

  /** Rows of feed that a form has at least. */
  public static final int FEEDS = 4;

  ProgrammeForm() {
    super(Kind.PROGRAMME, "programme");
  }

  @Override
  public FormShape shape(Setting setting, String document) {
    List<Group> groups = new ArrayList<>();
    groups.add(when());
    groups.add(mowing(setting));
    groups.add(heights());
    groups.add(new Group("Its feeding", FEEDING + " A row left empty is no feed.", List.of()));
    JsonNode feeding = Rows.parsed(document).path("feeding");
    groups.addAll(
        Rows.of(
            document,
            "feeding",
            FEEDS,
            1,
            i -> feed("feeding", i, feeding.path(i).has("dayOfYear"))));
    groups.add(rest());
    return new FormShape(groups);
  }

  @Override
  public Form begun(Setting setting) {
    return super.begun(setting)
        .with("from", setting.today().toString())
        .with("mowing.clippings.returnedShare", "1");
  }

  private static Group when() {
    return new Group(
        "",
        "",
        List.of(
            Field.date("from", "Holds from")
                .hint("Until the day before, the programme until now holds; it is kept.")
                .needed(),
            Field.text("name", "Name").hint("For instance its aim, or the year.")));
  }

  private static Group mowing(Setting setting) {
    UsualSeason usual = UsualSeason.of(setting.southern());
    return new Group(
        "Its mowing",
        "",
        List.of(
            Field.number("mowing.heightMm", "Cut height", Measure.HEIGHT)
                .hint("Left empty: the usual height of the grass, which the lawn's page names."),
            Field.number("mowing.trigger.everyDays", "Mown every so many days", "")
                .hint(usualTrigger(setting.third())),
            Field.flag(
                    "mowing.trigger.oneThird",
                    "Mown when %s would come off".formatted(setting.third()))
                .hint("One of the two, not both."),
            Field.text("mowing.from", "First day of mowing in a year").hint(usualDay(usual.from())),
            Field.text("mowing.to", "Last day of mowing in a year").hint(usualDay(usual.to())),
            Field.number("mowing.clippings.returnedShare", shareLabel(setting.units()), "")
                .hint("From 0, none, to 1, all of them. Left empty: all, the model's default."),
            Field.flag("mowing.clippings.byRules", "Decided at each mowing")
                .hint("By that day's advice; leave the share empty then.")));
  }

  private static Group heights() {
    List<Field> fields = new ArrayList<>();
    for (Month month : Month.values()) {
      fields.add(
          Field.number(
              "mowing.heightMmByMonth." + leafturn.records.Choice.word(month),
              Words.capital(leafturn.records.Choice.word(month)),
              Measure.HEIGHT));
    }
    return new Group(
        "Months with a cut height of their own",
        "For instance higher in summer. A month left empty has the usual height.",
        fields);
  }

  /**
   * What stands in for an interval that is not given.
   *
   * @param third largest share of the height that one cut should take, in words
   */
  public static String usualTrigger(String third) {
    return "Left empty: when %s of the height would come off, the usual rule.".formatted(third);
  }

  private static String usualDay(CalendarDay day) {
    return MONTH_DAY + " Left empty: %s, the model's default.".formatted(UsualSeason.monthDay(day));
  }

  static String shareLabel(Units units) {
    return units == Units.US ? "Share of clippings left" : "Share of clippings returned";
  }

  /**
   * A row of feed.
   *
   * @param list path of the list
   * @param number of the row, from 0
   * @param byDayOfYear true where its day is told by its number
   */
  public static Group feed(String list, int number, boolean byDayOfYear) {
    String at = list + "[" + number + "].";
    Field day =
        byDayOfYear
            ? Field.number(at + "dayOfYear", "Day of the year", "")
            : Field.text(at + "on", "Day");
    return Group.row(
        "Feed " + (number + 1),
        day,
        Field.number(at + "fastNGPerM2", "N at once", Measure.MASS_PER_AREA),
        Field.number(at + "slowNGPerM2", "N slowly", Measure.MASS_PER_AREA),
        Field.number(at + "pGPerM2", "P", Measure.MASS_PER_AREA),
        Field.number(at + "kGPerM2", "K", Measure.MASS_PER_AREA));
  }

  private static Group rest() {
    return new Group(
        "Water, and who mows",
        "",
        List.of(
            Field.number("irrigation.shareOfDemand", "Share of its water need given", "")
                .hint("From 0 to 1.5; 1: all that it would use. Left empty: none is given."),
            Field.text("mownBy", "Mown by"),
            Field.someOf("mowingDays", "Days on which they can mow", days()).hint("None: any day."),
            Field.numbers("deckHeightsMm", "Heights the deck can be set to", Measure.HEIGHT)
                .hint("With gaps between them. None: any height."),
            note()));
  }

  /** The days of the week. */
  static List<Choice> days() {
    return Words.of(DayOfWeek.class);
  }

  @Override
  public String title(ProgrammeSheet content, Setting setting) {
    String from = "Programme from " + DayWords.dayAndYear(content.from());
    return content.name() == null
        ? from
        : content.name() + ", from " + DayWords.dayAndYear(content.from());
  }

  @Override
  public List<Line> findings(ProgrammeSheet content, Setting setting) {
    String seldom = MowingsAYear.words(MowingsAYear.most(content.mowing()));
    return seldom.isEmpty() ? List.of() : List.of(new Line("Mowings", seldom));
  }
}
