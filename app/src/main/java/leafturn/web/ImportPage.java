package leafturn.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import leafturn.quantity.Units;
import leafturn.records.Choice;
import leafturn.records.exchange.Arrivals;
import leafturn.records.exchange.Column;
import leafturn.records.exchange.Findings;
import leafturn.records.exchange.Preview;
import leafturn.records.exchange.Reading;
import leafturn.records.exchange.Reading.DateOrder;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialReadingsSheet;
import leafturn.records.table.Table;
import leafturn.web.form.Field;
import org.jspecify.annotations.Nullable;

/** A file that was looked at, before anything of it is imported. */
public final class ImportPage {
  private static final int SHOWN = 12;
  private static final int SHOWN_CELLS = 3;
  private static final int LONGEST_CELL = 24;

  private final KeptFile file;
  private final String target;
  private final Preview preview;
  private final String changed;
  private final Units units;

  /**
   * @param target what the file is for, in words; may be empty
   * @param changed what happened since it was last looked at; may be empty
   * @param units of whoever looks at it
   */
  ImportPage(KeptFile file, String target, Preview preview, String changed, Units units) {
    this.units = units;
    this.file = file;
    this.target = target;
    this.preview = preview;
    this.changed = changed;
  }

  /**
   * A column of the file and what it is taken for.
   *
   * @param letters its letters in a spreadsheet
   * @param cells its first values
   * @param units the units its numbers may be in; none where that makes no difference
   * @param dates the ways its dates may be written; none where it holds no dates
   */
  public record ColumnOfFile(
      int place,
      String letters,
      String heading,
      String cells,
      String taken,
      List<Field.Choice> units,
      String unit,
      List<Field.Choice> dates,
      String order) {}

  public KeptAddress address() {
    return new KeptAddress("/import/" + file.key());
  }

  /** Where the forms of the page are sent. */
  public record KeptAddress(String page) {
    public String columns() {
      return page + "/columns";
    }

    public String add() {
      return page + "/add";
    }
  }

  /** What the file is and for what. */
  public String place() {
    String sheet = preview.table().sheet();
    return file.kind().title()
        + " · "
        + file.name()
        + (sheet.isEmpty() ? "" : ", sheet " + sheet)
        + (target.isEmpty() ? "" : " · " + target);
  }

  public String changed() {
    return changed;
  }

  public String headline() {
    int faults = preview.faults().count();
    if (faults > 0) {
      return faults == 1
          ? "One thing is to be put right first."
          : "%,d things are to be put right first.".formatted(faults);
    }
    int news = news();
    return news == 0 ? "There is nothing new in this file." : words(news) + " can be imported.";
  }

  /** How many things would be added; readings come many to a sheet. */
  private int news() {
    if (file.kind() == ImportKind.TRIAL) {
      return (int) ofKind(Kind.TRIAL);
    }
    if (file.kind() != ImportKind.READINGS) {
      return preview.arrivals().count();
    }
    return preview.arrivals().sheets().stream()
        .map(Arrivals.NewSheet::content)
        .map(TrialReadingsSheet.class::cast)
        .mapToInt(sheet -> sheet.readings().size())
        .sum();
  }

  private String words(int count) {
    if (file.kind() != ImportKind.PROPERTIES) {
      return file.kind().count(count);
    }
    long properties = ofKind(Kind.PROPERTY);
    long lawns = ofKind(Kind.LAWN);
    String first = "%,d %s".formatted(properties, properties == 1 ? "property" : "properties");
    String second = "%,d %s".formatted(lawns, lawns == 1 ? "lawn" : "lawns");
    return properties == 0 ? second : lawns == 0 ? first : first + " and " + second;
  }

  private long ofKind(Kind<?> kind) {
    return preview.arrivals().sheets().stream().filter(sheet -> sheet.kind() == kind).count();
  }

  /** What would be added, in a few words: "12 entries", "2 properties and 4 lawns". */
  String arrivals() {
    return words(news());
  }

  /** What importing would do, in sentences. */
  public List<String> summary() {
    List<String> sentences = new ArrayList<>();
    if (preview.faults().count() > 0) {
      sentences.add("Nothing is imported before the file has no faults.");
    }
    add(
        sentences,
        preview.alreadyThere(),
        "One is in the book already and stays as it is.",
        "%,d are in the book already and stay as they are.");
    add(
        sentences,
        preview.conflicts().count(),
        "One is not as the book has it, which stays as it is.",
        "%,d are not as the book has them, which stays as it is.");
    sentences.addAll(preview.notes());
    return sentences;
  }

  private static void add(List<String> sentences, int count, String one, String many) {
    if (count > 0) {
      sentences.add(count == 1 ? one : many.formatted(count));
    }
  }

  public boolean ready() {
    return preview.ready();
  }

  /** The words on the button. */
  public String importThese() {
    int count = news();
    return (count == 1 ? "Import this " : "Import these ")
        + (count == 1 ? words(count).replaceFirst("^1 ", "") : words(count));
  }

  public String digest() {
    return preview.arrivals().digest();
  }

  public Findings faults() {
    return preview.faults();
  }

  public Findings conflicts() {
    return preview.conflicts();
  }

  public Findings remarks() {
    return preview.remarks();
  }

  /** How many of some findings are not shown. */
  public int more(Findings findings) {
    return findings.count() - findings.kept().size();
  }

  /** The first of what would be added, a line each. */
  public List<String> firstArrivals() {
    List<String> lines = new ArrayList<>();
    preview.arrivals().sheets().stream()
        .limit(SHOWN)
        .map(Arrivals.NewSheet::words)
        .forEach(lines::add);
    lines.addAll(preview.daysInWords(SHOWN - lines.size(), units));
    return lines;
  }

  public int moreArrivals() {
    return Math.max(0, preview.arrivals().count() - SHOWN);
  }

  public List<String> sheets() {
    return preview.table().sheets();
  }

  public String sheet() {
    return preview.table().sheet();
  }

  public boolean hasColumns() {
    return !preview.table().headings().isEmpty() && file.laboratory() == null;
  }

  public boolean isWeather() {
    return file.kind() == ImportKind.WEATHER;
  }

  public boolean replacing() {
    return file.replacing();
  }

  /** What a column can be taken for. */
  public List<Field.Choice> meanings() {
    return file.kind().columns().stream()
        .map(column -> new Field.Choice(column.name(), units.told(column.meaning())))
        .toList();
  }

  public List<ColumnOfFile> columns() {
    List<ColumnOfFile> columns = new ArrayList<>();
    Table table = preview.table();
    for (int place = 0; place < table.headings().size(); place++) {
      Reading.@Nullable Pick pick = preview.reading().picks().get(place);
      columns.add(
          new ColumnOfFile(
              place,
              Table.letters(place),
              table.headings().get(place),
              firstCells(place),
              pick == null ? "" : pick.column().name(),
              pick == null ? List.of() : units(pick.column()),
              pick == null ? "" : Choice.word(pick.units()),
              pick == null ? List.of() : dates(pick.column()),
              pick == null ? "" : Choice.word(pick.dates())));
    }
    return columns;
  }

  private String firstCells(int place) {
    return preview.table().rows().stream()
        .map(row -> row.cells().get(place))
        .filter(cell -> !cell.isEmpty())
        .limit(SHOWN_CELLS)
        .map(cell -> cell.length() > LONGEST_CELL ? cell.substring(0, LONGEST_CELL) + "…" : cell)
        .collect(Collectors.joining(" · "));
  }

  private static List<Field.Choice> units(Column column) {
    if (column.measure() == null) {
      return List.of();
    }
    return Arrays.stream(Units.values())
        .map(each -> new Field.Choice(Choice.word(each), column.unit(each)))
        .toList();
  }

  private static List<Field.Choice> dates(Column column) {
    if (column.type() != Column.Type.DATE) {
      return List.of();
    }
    return List.of(
        new Field.Choice(Choice.word(DateOrder.YEAR_FIRST), "2015-05-28"),
        new Field.Choice(Choice.word(DateOrder.DAY_FIRST), "28/5/2015"),
        new Field.Choice(Choice.word(DateOrder.MONTH_FIRST), "5/28/2015"));
  }
}
