package leafturn.records.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;

import java.time.LocalDate;
import java.util.List;
import leafturn.quantity.Units;
import leafturn.records.Examples;
import leafturn.records.SourceText;
import leafturn.records.book.Sheet;
import leafturn.records.exchange.Findings.Finding;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.ProgrammeSheet;
import leafturn.records.sheet.Property;
import leafturn.web.ImportKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PropertyImportTest extends ImportingTest {
  private static final String HEADER =
      "property,latitude,time_zone,station,lawn,grass,area_m2,texture,cut_height_mm,clippings\n";

  @Test
  void theExampleComesInOnce() {
    String csv = Examples.text("properties.csv").text();
    Preview first = book.properties(csv);
    assertThat(first.faults().kept()).isEmpty();
    book.write(first);
    int rows = (int) csv.lines().count() - 1;
    assertThatList(book.book().read(reader -> reader.all(Kind.LAWN))).hasSize(3 + rows);
    assertThatList(book.book().read(reader -> reader.all(Kind.PROGRAMME))).hasSize(rows);
    Preview again = book.properties(csv);
    assertThat(again.arrivals().count()).isZero();
    assertThat(again.conflicts().kept()).isEmpty();
    assertThat(again.faults().kept()).isEmpty();
  }

  @Test
  void aPropertyMayHaveSeveralLawnsAndBeDescribedOnce() {
    Preview preview =
        book.properties(
            HEADER
                + "Fern Row,40.5,UTC,hill,Front,tall fescue,420,loam,76,collected\n"
                + "Fern Row,,,,Back,fine fescue,,,,\n"
                + "Fern Row,40.6,,,Side,fine fescue,,,,\n");
    assertThat(preview.arrivals().sheets())
        .extracting(sheet -> sheet.words())
        .containsExactly(
            "Property Fern Row, weather of Hill",
            "Lawn Front of Fern Row, tall fescue",
            "Programme of Front from 1 January 2015 on",
            "Lawn Back of Fern Row, fine fescue",
            "Lawn Side of Fern Row, fine fescue");
    assertThat(preview.faults().kept())
        .containsExactly(
            new Finding(
                "line 4, column B / latitude",
                "Line 2 says 40.5 of this property; say the same, or empty this cell."));
    ProgrammeSheet programme = (ProgrammeSheet) preview.arrivals().sheets().get(2).content();
    assertThat(programme.from()).isEqualTo(LocalDate.of(2015, 1, 1));
    assertThat(programme.mowing().clippings().returnedShare()).isZero();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        ",40,UTC,,Front,fine fescue,,,,|line 2, column A / property|the property is missing",
        "Fern,,UTC,,Front,fine fescue,,,,|line 2, column B / latitude|it is missing",
        "Fern,95,UTC,,Front,fine fescue,,,,|line 2, column B / latitude|from -90 to 90",
        "Fern,40,Mars,,Front,fine fescue,,,,|line 2, column C / time_zone|is not a time zone",
        "Fern,40,UTC,Hil,Front,fine fescue,,,,|line 2, column D / station|did you mean Hill?",
        "Fern,-33.8,UTC,Hill,Front,fine fescue,,,,|line 2, column D / station|in the other hemisphere",
        "Fern,40,UTC,,,fine fescue,,,,|line 2, column E / lawn|the lawn has no name",
        "Fern,40,UTC,,Front,,,,,|line 2, column F / grass|it is missing",
        "Fern,40,UTC,,Front,fescue,,,,|line 2, column F / grass|fine fescue",
        "Fern,40,UTC,,Front,fine fescue,0,,,|line 2, column G / area_m2|0 is out of range",
        "Fern,40,UTC,,Front,fine fescue,,mud,,|line 2, column H / texture|is not a texture",
        "Fern,40,UTC,,Front,fine fescue,,,900,|line 2, column I / cut_height_mm|out of range",
        "Fern,40,UTC,,Front,fine fescue,,,,gone|line 2, column J / clippings|give returned"
      })
  void everyFaultNamesItsCell(String row, String place, String sentence) {
    assertThat(book.properties(HEADER + row).faults().kept())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.place()).isEqualTo(place);
              assertThat(fault.sentence()).containsIgnoringCase(sentence);
            });
  }

  @Test
  void aTableOfTheOtherImportIsToldWhereItBelongs() {
    String toLog = "Its columns are those of “%s”".formatted(ImportKind.LOG.title());
    String toProperties = "Its columns are those of “%s”".formatted(ImportKind.PROPERTIES.title());
    String log = "property,lawn,date,what,clippings\nFern,Front,2015-05-28,mown,returned\n";
    String properties = HEADER + "Fern,40,UTC,,Front,fine fescue,,,,\n";
    assertThat(book.properties(log).notes()).first().asString().startsWith(toLog);
    assertThat(book.log(properties, null).notes()).first().asString().startsWith(toProperties);
    assertThat(book.properties(properties).notes()).noneMatch(note -> note.startsWith("Its"));
    assertThat(book.log(log, null).notes()).noneMatch(note -> note.startsWith("Its"));
  }

  @Test
  void aPropertyIsKnownByItsNameWhateverItsAddress() {
    book.write(book.properties(HEADER + "Fern,40,UTC,,Front,fine fescue,,,,\n"));
    Sheet<Property> fern =
        book.book().read(reader -> reader.at(Kind.PROPERTY, "fern")).orElseThrow();
    String moved =
        Kind.PROPERTY
            .write(fern.content())
            .replace("\"address\":\"fern\"", "\"address\":\"elsewhere\"");
    book.book()
        .write(
            "Ada",
            writing ->
                writing.revise(
                    Kind.PROPERTY,
                    fern.id(),
                    fern.version(),
                    Kind.PROPERTY.read(new SourceText("property", moved))));
    Preview again = book.properties(HEADER + "Fern,,,,Back,fine fescue,,,,\n");
    assertThat(again.faults().kept()).isEmpty();
    assertThat(again.arrivals().sheets())
        .extracting(sheet -> sheet.words())
        .containsExactly("Lawn Back of Fern, fine fescue");
  }

  @Test
  void twoSpacesMakeNoOtherNameOfAPropertyOrALawn() {
    book.write(book.properties(HEADER + "Elm  House,40,UTC,,Front  green,fine fescue,,,,\n"));
    Sheet<Property> elm =
        book.book().read(reader -> reader.at(Kind.PROPERTY, "elm-house")).orElseThrow();
    assertThat(elm.content().name()).isEqualTo("Elm House");
    Preview again = book.properties(HEADER + "elm   house,,,,front   Green,fine fescue,,,,\n");
    assertThat(again.faults().kept()).isEmpty();
    assertThat(again.arrivals().sheets()).isEmpty();
  }

  private static final String MIXED = "property,latitude,time_zone,lawn,grass,mixture\n";

  @Test
  void aMixtureComesInAndIsTheSameAgain() {
    String row = "Fern,40,UTC,Front,tall fescue,";
    String table = MIXED + row + "Fine fescue 20; perennial ryegrass 12.5 %\n";
    book.write(book.properties(table));
    LawnSheet lawn =
        book.book().read(reader -> reader.at(Kind.LAWN, "fern-front")).orElseThrow().content();
    assertThat(lawn.grasses())
        .isEqualTo("tall fescue 67.5 %, fine fescue 20 %, perennial ryegrass 12.5 %");
    Column column =
        PropertyColumns.ALL.stream()
            .filter(one -> one.name().equals("mixture"))
            .findFirst()
            .orElseThrow();
    String cell = new CellSource(Kind.LAWN.write(lawn)).text(column, Units.METRIC);
    assertThat(cell).isEqualTo("fine fescue 20; perennial ryegrass 12.5");

    for (String same : List.of(table, MIXED + row + cell + "\n", MIXED + row + "\n")) {
      Preview again = book.properties(same);
      assertThat(again.arrivals().count()).isZero();
      assertThat(again.conflicts().kept()).as(same).isEmpty();
      assertThat(again.faults().kept()).isEmpty();
    }
    assertThat(book.properties(MIXED + row + "fine fescue 30\n").conflicts().kept())
        .containsExactly(
            new Finding(
                "line 2, column F / mixture",
                "The book has \"fine fescue 20; perennial ryegrass 12.5\". The book stays as it"
                    + " is."));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "fine fescue|give each further grass with its per cent",
        "20|give each further grass with its per cent",
        ";|give each further grass with its per cent",
        "fine fescue 20 perennial ryegrass 10|give each further grass with its per cent",
        "fescue 20|fine fescue",
        "tall fescue 20|is named already",
        "fine fescue 60|from 1 to 50",
        "fine fescue 40; perennial ryegrass 30|the main grass is the one there is most of"
      })
  void everyFaultOfAMixtureIsToldOfItsCell(String cell, String sentence) {
    assertThat(book.properties(MIXED + "Fern,40,UTC,Front,tall fescue," + cell).faults().kept())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.place()).isEqualTo("line 2, column F / mixture");
              assertThat(fault.sentence()).containsIgnoringCase(sentence);
            });
  }

  @Test
  void allFaultsOfARowAreToldAtOnceAndThoseOfItsPropertyInItsFirstRow() {
    Preview preview =
        book.properties(
            HEADER
                + "Alder,95,UTC,,Lawn,fine fescue,640,,,\n"
                + "Alder,,,,Lawn,fescue,-3,,,\n"
                + ",40,Mars,,Lawn,tall fescue,0,,,\n"
                + "Good,40.7,UTC,,Front,tall fescue,\"1,200\",,,\n");
    assertThat(preview.faults().kept())
        .extracting(Finding::place)
        .containsExactlyInAnyOrder(
            "line 2, column B / latitude",
            "line 3, column E / lawn",
            "line 3, column F / grass",
            "line 3, column G / area_m2",
            "line 4, column A / property",
            "line 4, column C / time_zone",
            "line 4, column G / area_m2",
            "line 5, column G / area_m2");
    assertThat(preview.faults().kept())
        .contains(
            new Finding(
                "line 5, column G / area_m2",
                "\"1,200\" has a comma: write 1200 if it parts thousands, 1.200 if it is a decimal"
                    + " comma."));
  }

  @Test
  void aLawnThatStandsTwiceIsTold() {
    Preview preview =
        book.properties(
            HEADER
                + "Fern,40,UTC,,Front,fine fescue,,,,\n"
                + "Fern,40,UTC,,front,fine fescue,,,,\n");
    assertThat(preview.faults().kept())
        .containsExactly(
            new Finding(
                "line 3, column E / lawn", "This lawn stands in line 2 too; keep one of them."));
  }

  @Test
  void whatTheBookSaysOtherwiseIsAConflictAndStays() {
    Preview preview =
        book.properties(HEADER + "Linden House,41,America/New_York,,Front,fine fescue,,,,\n");
    assertThat(preview.faults().kept()).isEmpty();
    assertThat(preview.arrivals().count()).isZero();
    assertThat(preview.conflicts().kept())
        .containsExactly(
            new Finding(
                "line 2, column B / latitude", "The book has 40.78. The book stays as it is."),
            new Finding(
                "line 2, column F / grass",
                "The book has \"tall fescue\". The book stays as it is."));
  }

  @Test
  void aNewLawnOfAPropertyInTheBookComesIn() {
    book.write(book.properties(HEADER + "Linden House,,,,Side,fine fescue,50,,,\n"));
    assertThatList(book.book().read(reader -> reader.ofProperty(Kind.LAWN, ImportBook.HOUSE)))
        .extracting(lawn -> lawn.content().address())
        .contains("linden-house-side");
  }
}
