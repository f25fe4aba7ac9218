package leafturn.web.trial;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leafturn.records.sheet.LaboratorySheet;
import leafturn.web.form.Field;
import leafturn.web.form.Field.Choice;
import leafturn.web.form.FormShape;
import leafturn.web.form.FormShape.Group;

/** The form of a laboratory's mapping. */
public final class LaboratoryForm {
  private static final int FEWEST_ROWS = 6;
  private static final int MORE_ROWS = 3;
  private static final int MOST_ROWS = 60;

  private LaboratoryForm() {}

  /** The fields, with rows enough for a mapping's document. */
  public static FormShape shape(JsonNode document) {
    List<Group> groups = new ArrayList<>();
    groups.add(
        new Group(
            "",
            "",
            List.of(
                Field.text("name", "Name").needed(),
                Field.oneOf(
                        "dates",
                        "Dates are written",
                        List.of(
                            new Choice("year first", "2015-05-28"),
                            new Choice("day first", "28/5/2015"),
                            new Choice("month first", "5/28/2015")))
                    .needed(),
                Field.oneOf(
                        "duplicates",
                        "A second row of a sample",
                        List.of(
                            new Choice("repeated rows", "is its duplicate"),
                            new Choice("none", "is a fault")))
                    .hint("Duplicates are averaged; how far they lie apart is kept.")
                    .needed())));
    int rows =
        Math.min(MOST_ROWS, Math.max(FEWEST_ROWS, document.path("columns").size() + MORE_ROWS));
    for (int i = 0; i < rows; i++) {
      groups.add(column("columns[%d].".formatted(i), i + 1));
    }
    groups.add(new Group("", "", List.of(Field.longText("note", "Note"))));
    return new FormShape(groups);
  }

  private static Group column(String path, int number) {
    List<Choice> holds =
        Stream.of(LaboratorySheet.Holds.values())
            .map(each -> new Choice(leafturn.records.Choice.word(each), each.words()))
            .toList();
    return Group.row(
        "Column " + number,
        Field.text(path + "heading", "Heading"),
        Field.oneOf(path + "holds", "Holds", holds),
        Field.text(path + "outcome", "Outcome"),
        Field.text(path + "unit", "Unit"),
        Field.text(path + "method", "Extractant"),
        Field.number(path + "detectionLimit", "Detection limit", ""));
  }
}
