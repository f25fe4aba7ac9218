package leafturn.records.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.List;
import leafturn.records.SourceText;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.Sheet;
import leafturn.records.round.DemoBook;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LaboratorySheet;
import leafturn.records.sheet.TrialReadingsSheet;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.table.Table;
import leafturn.records.table.TableFile;
import leafturn.records.trial.TrialGrounds;
import leafturn.trials.design.Outcome;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings of a trial from files: looked at with every fault, then added once. */
class ReadingImportTest {
  private static final String LABORATORY = "00000000-0000-4000-8000-0000000000aa";

  @TempDir Path folder;
  private Book book;
  private Sheet<TrialSheet> trial;
  private TrialGround ground;

  @BeforeEach
  void open() {
    book = Book.open(BookPlace.of(folder.resolve("book")), InstantSource.system());
    DemoBook.write(book);
    trial = book.read(reading -> reading.all(Kind.TRIAL)).get(0);
    ground = new TrialGrounds().of(trial.content());
    LaboratorySheet laboratory =
        Kind.LABORATORY.read(
            new SourceText(
                "laboratory",
                "{\"name\": \"Fen Laboratory\", \"dates\": \"day first\","
                    + " \"duplicates\": \"repeated rows\", \"columns\": ["
                    + "{\"heading\": \"Bag\", \"holds\": \"sample\"},"
                    + "{\"heading\": \"Plot\", \"holds\": \"plot\"},"
                    + "{\"heading\": \"Taken\", \"holds\": \"date\"},"
                    + "{\"heading\": \"K2O ppm\", \"holds\": \"value\","
                    + " \"outcome\": \"soil_potassium\", \"unit\": \"ppm K2O\","
                    + " \"method\": \"Mehlich-3\", \"detectionLimit\": 5}]}"));
    book.write("Ada", writing -> writing.add(Kind.LABORATORY, LABORATORY, laboratory));
  }

  @AfterEach
  void close() {
    book.close();
  }

  private Preview look(String csv, @Nullable String laboratory) {
    Table table = TableFile.read("r.csv", csv.getBytes(StandardCharsets.UTF_8), null);
    return book.read(
        reading ->
            ReadingImport.look(
                reading,
                table,
                Reading.byHeadings(table, ReadingColumns.ALL),
                new ReadingImport.Ask(
                    trial.id(),
                    ground,
                    laboratory == null
                        ? null
                        : reading.find(Kind.LABORATORY, laboratory).orElseThrow(),
                    "0123456789abcdef".repeat(4),
                    LocalDate.of(2014, 10, 20))));
  }

  private static List<String> sentences(Findings findings) {
    return findings.kept().stream().map(each -> each.place() + ": " + each.sentence()).toList();
  }

  @Test
  void everyFaultIsToldByItsCellAndNothingArrivesBeside() {
    Preview preview =
        look(
            "plot,date,outcome,value,unit\n"
                + "B1-1,2014-06-02,soil_potassium,about 120,mg/kg\n"
                + "B99-1,2014-06-02,soil_potassium,120,mg/kg\n"
                + "B1-2,2014-06-02,potash,120,mg/kg\n"
                + "B2-1,2014-06-02,soil_potassium,120,\n"
                + "B2-2,2014-06-31,soil_potassium,120,mg/kg\n"
                + "B3-1,2014-06-02,soil_potassium,120,lb/acre\n"
                + "B4-1,2014-06-02,soil_potassium,110,mg/kg\n"
                + "B4-1,2014-06-02,soil_potassium,112,mg/kg\n",
            null);
    assertThat(preview.ready()).isFalse();
    assertThatList(sentences(preview.faults()))
        .satisfiesExactly(
            each -> assertThat(each).contains("line 2", "value", "is no number"),
            each -> assertThat(each).contains("line 3, column A / plot", "no plot of the layout"),
            each ->
                assertThat(each).contains("line 4, column C / outcome", "no outcome of the plan"),
            each ->
                assertThat(each)
                    .contains("line 5, column E / unit", "unit of soil_potassium is missing"),
            each -> assertThat(each).contains("line 6", "date"),
            each -> assertThat(each).contains("line 7, column E / unit", "bulk density"),
            each -> assertThat(each).contains("line 9", "stands in line 8 too"));
  }

  @Test
  void aStrayCellIsAFaultBesideThoseOfOtherRows() {
    assertThatList(
            sentences(
                look(
                        "plot,date,outcome,value,unit\n"
                            + "B1-1,2014-06-02,soil_potassium,120,5,mg/kg\n"
                            + "B1-2,2014-06-02,potash,120,mg/kg\n",
                        null)
                    .faults()))
        .satisfiesExactly(
            each ->
                assertThat(each)
                    .isEqualTo("line 2: It has 6 cells, but the header names 5 columns."),
            each -> assertThat(each).contains("line 3", "no outcome of the plan"));
    assertThatList(
            sentences(
                look("Bag,Plot,Taken,K2O ppm\n,B1-1,2/6/2014\n,B9-9,2/6/2014,150\n", LABORATORY)
                    .faults()))
        .satisfiesExactly(
            each ->
                assertThat(each)
                    .isEqualTo("line 2: It has 3 cells, but the header names 4 columns."),
            each -> assertThat(each).contains("line 3", "no plot of the layout"));
    Table table = TableFile.read("r.csv", "plot,value\n1\n".getBytes(StandardCharsets.UTF_8), null);
    assertThatThrownBy(() -> ReadingImport.read(table, ground))
        .hasMessageContaining("r.csv, line 2: It has 1 cell, but the header names 2 columns.");
  }

  @Test
  void whatTheBookHasIsNotAddedAgainAndOtherValuesAreTold() {
    TrialReadingsSheet there =
        book.read(reading -> reading.ofTrial(Kind.TRIAL_READINGS, trial.id())).stream()
            .map(Sheet::content)
            .filter(sheet -> sheet.readings().get(0).outcome().equals("quality"))
            .findFirst()
            .orElseThrow();
    var first = there.readings().get(0);
    var second = there.readings().get(1);
    Preview preview =
        look(
            "plot,date,outcome,value,unit,rater\n%s,%s,quality,%s,1-9,%s\n%s,%s,quality,1.5,1-9,%s\n"
                .formatted(
                    first.plot(),
                    first.date(),
                    first.value(),
                    first.rater(),
                    second.plot(),
                    second.date(),
                    second.rater()),
            null);
    assertThat(preview.faults().count()).isZero();
    assertThat(preview.alreadyThere()).isEqualTo(1);
    assertThatList(sentences(preview.conflicts()))
        .satisfiesExactly(each -> assertThat(each).contains("line 3", "The book has"));
    assertThat(preview.ready()).isFalse();
  }

  @Test
  void aLaboratorysTableIsReadByItsMappingAndTheSameFileAddsNothing() {
    String csv =
        "Bag,Plot,Taken,K2O ppm,pH\n"
            + ",B1-1,2/6/2014,150,6.1\n"
            + ",B1-1,2/6/2014,156,6.1\n"
            + ",B1-2,2/6/2014,nd,6.3\n";
    Preview preview = look(csv, LABORATORY);
    assertThat(sentences(preview.faults())).isEmpty();
    assertThat(preview.ready()).isTrue();
    TrialReadingsSheet sheet = (TrialReadingsSheet) preview.arrivals().sheets().get(0).content();
    assertThatList(sheet.readings()).hasSize(3);
    assertThat(sheet.readings().get(0).unit()).isEqualTo("ppm K2O");
    assertThat(sheet.readings().get(0).method()).isEqualTo("Mehlich-3");
    assertThat(sheet.readings().get(1).duplicate()).isEqualTo(2);
    assertThat(sheet.readings().get(2).detectionLimit()).isEqualTo(5);
    book.write(
        "Ada",
        writing -> {
          preview.arrivals().write(writing);
          return true;
        });
    Preview again = look(csv, LABORATORY);
    assertThat(again.arrivals().count()).isZero();
    assertThat(again.alreadyThere()).isEqualTo(3);
    assertThat(again.notes()).anySatisfy(each -> assertThat(each).contains("imported before"));
  }

  @Test
  void aCodeOnABagStandsForItsPlotAndDay() {
    String bag = SampleBags.of(ground, Outcome.Kind.SOIL).getKey();
    String rows = "Bag,Plot,Taken,K2O ppm\n" + bag + ",,,150\nNOCODE,,,150\n";
    Preview preview = look(rows, LABORATORY);
    assertThatList(sentences(preview.faults()))
        .satisfiesExactly(each -> assertThat(each).contains("NOCODE", "no code of a bag"));
  }

  @Test
  void aRowThatContradictsItsBagIsRefused() {
    var bag = SampleBags.of(ground, Outcome.Kind.SOIL);
    String plot = bag.getValue().plot();
    String other = plot.equals("B1-1") ? "B1-2" : "B1-1";
    String day = bag.getValue().date().toString();
    String rows =
        "sample,plot,date,outcome,value,unit\n%1$s,%2$s,,soil_potassium,150,mg/kg\n%1$s,%3$s,%4$s,soil_potassium,160,mg/kg\n"
            .formatted(bag.getKey(), other, plot, bag.getValue().date().plusDays(1));
    assertThatList(sentences(look(rows, null).faults()))
        .satisfiesExactly(
            each -> assertThat(each).contains("line 2", plot + " on " + day, "plot " + other),
            each -> assertThat(each).contains("line 3", plot + " on " + day, "put one right"));
    String mapped =
        "Bag,Plot,Taken,K2O ppm\n%1$s,%2$s,,150\n%1$s,%3$s,1/1/2014,150\n%1$s,%3$s,,150\n"
            .formatted(bag.getKey(), other, plot);
    assertThatList(sentences(look(mapped, LABORATORY).faults()))
        .satisfiesExactly(
            each -> assertThat(each).contains("line 2", "plot " + other),
            each -> assertThat(each).contains("line 3", "2014-01-01"));
  }

  @Test
  void whatALaboratorysRowsHoldIsCheckedAsWhatIsTyped() {
    String rows = ",B1-1,2/6/2014,150\n".repeat(21) + ",B1-2,2/6/2014," + "9".repeat(90) + "\n";
    assertThatList(sentences(look("Bag,Plot,Taken,K2O ppm\n" + rows, LABORATORY).faults()))
        .satisfiesExactly(
            each -> assertThat(each).contains("line 22", "K2O ppm", "Duplicate", "from 1 to 20"),
            each -> assertThat(each).contains("line 23", "K2O ppm", "Value", "shorten it to 80"));
  }

  @Test
  void impossibleValuesDuplicatesFarApartAndDaysToComeAreTold() {
    Preview preview =
        look(
            "Bag,Plot,Taken,K2O ppm\n"
                + ",B1-1,2/6/2014,80\n,B1-1,2/6/2014,180\n"
                + ",B1-2,2/6/2014,150\n,B1-2,2/6/2014,160\n"
                + ",B2-1,2/6/2014,6\n,B2-2,2/6/2014,20000\n",
            LABORATORY);
    assertThat(sentences(preview.faults())).isEmpty();
    assertThatList(sentences(preview.remarks()))
        .anySatisfy(each -> assertThat(each).contains("line 3", "measured twice, 80 and 180"))
        .anySatisfy(each -> assertThat(each).contains("line 6", "outside what the plan allows"))
        .anySatisfy(each -> assertThat(each).contains("line 7", "outside what the plan allows"))
        .noneSatisfy(each -> assertThat(each).contains("line 5, K2O", "measured twice"));
    Preview refused =
        look("Bag,Plot,Taken,K2O ppm\n,B2-1,2/6/2014,-4\n,B2-1,21/10/2014,150\n", LABORATORY);
    assertThatList(sentences(refused.faults()))
        .satisfiesExactly(
            each -> assertThat(each).contains("line 2", "-4", "lies below 0"),
            each -> assertThat(each).contains("line 3", "21 October 2014 has not come yet"));
  }

  /** A class that a scale does not have is no value of it; an amount may be one all the same. */
  @Test
  void aRatingOutsideItsScaleIsRefused() {
    Preview preview =
        look("plot,date,outcome,value,unit,rater\nB1-1,2014-06-02,quality,0,1-9,Ada\n", null);
    assertThatList(sentences(preview.faults()))
        .satisfiesExactly(
            each -> assertThat(each).contains("0 lies outside what the plan allows, 1 to 9."));
  }

  @Test
  void whatWasWithdrawnIsEnteredAnewAndCounts() {
    String csv = "plot,date,outcome,value,unit\nB1-1,2014-06-02,soil_potassium,120,mg/kg\n";
    List<String> ids = new java.util.ArrayList<>();
    for (int time = 0; time < 3; time++) {
      Preview preview = look(csv, null);
      assertThat(preview.ready()).isTrue();
      assertThat(preview.notes().toString().contains("entered anew")).isEqualTo(time > 0);
      book.write(
          "Ada",
          writing -> {
            preview.arrivals().write(writing);
            return writing;
          });
      String id = preview.arrivals().sheets().get(0).id();
      var sheet = book.read(reading -> reading.find(Kind.TRIAL_READINGS, id)).orElseThrow();
      assertThat(sheet.withdrawn()).isFalse();
      assertThat(look(csv, null).alreadyThere()).isEqualTo(1);
      ids.add(id);
      book.write("Ada", writing -> writing.withdraw(Kind.TRIAL_READINGS, id, sheet.version()));
    }
    assertThat(ids).doesNotHaveDuplicates();
  }
}
