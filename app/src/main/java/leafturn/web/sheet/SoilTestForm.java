package leafturn.web.sheet;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.Choice;
import leafturn.records.sheet.Analyte;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.SoilTestSheet;
import leafturn.records.sheet.SoilUnit;
import leafturn.reports.DayWords;
import leafturn.web.form.Field;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;
import leafturn.web.form.FormShape.Group;

/** A soil test as it is entered. */
final class SoilTestForm extends SheetForm<SoilTestSheet> {
  private static final String LIST = "determinations";
  private static final List<Analyte> USUAL =
      List.of(
          Analyte.PH,
          Analyte.ORGANIC_MATTER,
          Analyte.PHOSPHORUS,
          Analyte.POTASSIUM,
          Analyte.MAGNESIUM,
          Analyte.CALCIUM);
  private static final String ANALYTE = "analyte";
  private static final String UNIT = "unit";
  private static final int SPARE = 2;
  private static final double USUAL_DEPTH_CM = 10;

  SoilTestForm() {
    super(Kind.SOIL_TEST, "soil test");
  }

  @Override
  public FormShape shape(Setting setting, String document) {
    List<Group> groups = new ArrayList<>();
    groups.add(test(setting));
    groups.add(
        new Group(
            "Its figures",
            "As the laboratory reports them. A figure below the detection limit: type it as <50, or"
                + " leave it empty and give the limit. Rows without either are left out.",
            List.of()));
    groups.addAll(Rows.of(document, LIST, USUAL.size() + SPARE, SPARE, SoilTestForm::figure));
    groups.add(new Group("", "", List.of(note())));
    return new FormShape(groups);
  }

  @Override
  public Form begun(Setting setting) {
    return offered(
        super.begun(setting)
            .with("day", setting.today().toString())
            .with("depthCm", Measure.DEPTH.begun(USUAL_DEPTH_CM, setting.units())),
        USUAL);
  }

  /** What its writer took out of a row is not offered again. */
  @Override
  public Form offeredAgain(Form faulty, Form sent) {
    List<String> rows = rows(sent);
    List<String> left = rows.stream().map(row -> sent.value(row + ANALYTE)).toList();
    boolean takenOut =
        rows.stream()
            .filter(row -> sent.value(row + ANALYTE).isEmpty())
            .anyMatch(row -> !sent.value(row + UNIT).isEmpty());
    return offered(
        faulty,
        USUAL.stream()
            .filter(analyte -> !takenOut || left.contains(Choice.word(analyte)))
            .toList());
  }

  /** Figures that no row is for stand in rows in which nothing stands. */
  private static Form offered(Form form, List<Analyte> figures) {
    List<String> rows = rows(form);
    List<String> told = rows.stream().map(row -> form.value(row + ANALYTE)).toList();
    Iterator<String> free =
        rows.stream()
            .filter(row -> form.values().keySet().stream().noneMatch(path -> path.startsWith(row)))
            .iterator();
    Form offered = form;
    for (Analyte analyte : figures) {
      if (!told.contains(Choice.word(analyte)) && free.hasNext()) {
        String row = free.next();
        offered =
            offered
                .with(row + ANALYTE, Choice.word(analyte))
                .with(row + UNIT, Choice.word(analyte.units().get(0)));
      }
    }
    return offered;
  }

  @Override
  public Form tidied(Form sent) {
    List<String> empty =
        rows(sent).stream()
            .filter(row -> sent.value(row + "value").isEmpty())
            .filter(row -> sent.value(row + "detectionLimit").isEmpty())
            .toList();
    Form filled = sent.without(path -> empty.stream().anyMatch(path::startsWith));
    for (Field field : filled.shape().fields()) {
      filled = belowLimit(filled, field.path());
    }
    return filled.closedUp();
  }

  /** A figure typed as {@code <50} is none, and 50 its detection limit. */
  private static Form belowLimit(Form form, String path) {
    String typed = form.value(path);
    if (!path.endsWith("].value") || !typed.startsWith("<")) {
      return form;
    }
    String limit = typed.substring(1).strip();
    String limitPath = path.substring(0, path.length() - "value".length()) + "detectionLimit";
    String given = form.value(limitPath);
    boolean same = given.isEmpty() || given.equals(limit);
    return same && !limit.isEmpty()
        ? form.without(path::equals).with(limitPath, limit)
        : form; // the reader of the document says what is wrong
  }

  /** The beginnings of the paths of its rows. */
  private static List<String> rows(Form form) {
    return form.shape().fields().stream()
        .map(Field::path)
        .filter(path -> path.endsWith("]." + ANALYTE))
        .map(path -> path.substring(0, path.length() - ANALYTE.length()))
        .toList();
  }

  private static String at(int number) {
    return LIST + "[" + number + "].";
  }

  private static Group test(Setting setting) {
    List<Field> fields = new ArrayList<>();
    fields.add(Field.date("day", "Day the samples were taken").needed());
    if (!setting.beds().isEmpty()) {
      fields.add(Field.oneOf("bed", "Of the bed", setting.beds()));
    }
    fields.add(Field.text("laboratory", "Laboratory").needed());
    fields.add(
        Field.text("extractant", "Extracted with")
            .hint("As the laboratory names it; figures of different ones do not compare."));
    fields.add(
        Field.number("depthCm", "Depth of the cores", Measure.DEPTH)
            .hint(
                "%s is common for lawns; take what the laboratory asked for."
                    .formatted(setting.units() == Units.US ? "4 in" : "10 cm"))
            .needed());
    fields.add(
        Field.longText("method", "How the samples were taken")
            .hint("How many cores, from where, mixed or not."));
    return new Group("", "", fields);
  }

  private static Group figure(int number) {
    return Group.row(
        "Figure " + (number + 1),
        Field.oneOf(at(number) + "analyte", "Of", Words.of(Analyte.class)),
        Field.number(at(number) + "value", "Figure", ""),
        Field.oneOf(at(number) + "unit", "Unit", units()),
        Field.number(at(number) + "detectionLimit", "Detection limit", ""),
        Field.flag(at(number) + "asOxide", "As oxide (P2O5, K2O)"));
  }

  private static List<Field.Choice> units() {
    return Choice.words(SoilUnit.class).stream().map(Field.Choice::of).toList();
  }

  @Override
  String row(Map<String, String> fields, Map<String, String> labels) {
    String unit = fields.getOrDefault("unit", "").replace("pH", "");
    String value = fields.get("value");
    String limit = fields.get("detectionLimit");
    String words = fields.getOrDefault("analyte", "?");
    words += value == null ? " <" + limit + " " + unit : " " + value + " " + unit;
    words = words.strip();
    if ("yes".equals(fields.get("asOxide"))) {
      words += " as oxide";
    }
    return value == null || limit == null ? words : words + " (detection limit " + limit + ")";
  }

  @Override
  public String title(SoilTestSheet content, Setting setting) {
    return "Soil test of " + DayWords.dayAndYear(content.day()) + ", " + content.laboratory();
  }

  @Override
  public List<Line> findings(SoilTestSheet content, Setting setting) {
    if (content.extractant() != null) {
      return List.of();
    }
    String undecided =
        content.determinations().stream()
            .map(each -> each.analyte())
            .filter(Analyte::statedAsOxide)
            .map(Choice::word)
            .collect(Collectors.joining(" and "));
    return undecided.isEmpty()
        ? List.of()
        : List.of(
            new Line(
                "Extractant not told", "how to read " + undecided + " depends on it: ask for it"));
  }
}
