package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.ProgrammeSheet;
import org.junit.jupiter.api.Test;

/** On a day one programme of a lawn begins at most, save what a book has already. */
class ProgrammeDaysTest extends HeronBankSite {
  private static final String TAKEN =
      "Another programme of this lawn, “Summer”, begins on 1 June 2015 already; correct or"
          + " withdraw that one, or give another day.";

  @Test
  void aSecondProgrammeOfADayIsRefusedBesideItsDay() throws Exception {
    added("programme", "lawn", programme("Summer", "2015-06-01"));
    HttpResponse<String> second = send("programme", "lawn", programme("High", "2015-06-01"));
    assertThat(second.statusCode()).isEqualTo(422);
    assertThat(second.body()).contains("id=\"f-from-fault\"", TAKEN);
    String other = added("programme", "lawn", programme("High", "2015-06-02"));
    HttpResponse<String> moved = correct(other, programme("High", "2015-06-01"));
    assertThat(moved.statusCode()).isEqualTo(422);
    assertThat(moved.body()).contains("id=\"f-from-fault\"", TAKEN);
    assertThat(correct(other, programme("Higher", "2015-06-02")).statusCode()).isEqualTo(303);
  }

  @Test
  void nothingComesBeforeTheFirstWhichHoldsForTheDaysBeforeIt() throws Exception {
    LocalDate first = programmes().get(0).content().from();
    Map<String, String> early = programme("Early", first.minusDays(9).toString());
    HttpResponse<String> before = send("programme", "lawn", early);
    assertThat(before.statusCode()).isEqualTo(422);
    assertThat(before.body())
        .contains("id=\"f-from-fault\"", "holds for the days before it too; correct its first day");

    String page = "/sheets/" + programmes().get(0).id();
    String sooner = first.minusDays(20).toString();
    assertThat(correct(page, programme("First", sooner)).statusCode()).isEqualTo(303);
    added("programme", "lawn", early);
    assertThat(programmes()).extracting(sheet -> sheet.content().name()).contains("Early");
  }

  @Test
  void formsBeginWithTheFirstDayThatIsFree() throws Exception {
    added("programme", "lawn", programme("Summer", "2015-05-28"));
    added("programme", "lawn", programme("High", "2015-05-29"));
    String lawn = "/lawns/heron-bank-play";
    assertThat(visitor.read(lawn + "/programme")).contains("value=\"2015-05-30\"");
  }

  @Test
  void oneThatWasWithdrawnIsNotRestoredBesideAnotherOfItsDay() throws Exception {
    String first = added("programme", "lawn", programme("High", "2015-06-01"));
    HttpResponse<String> gone =
        visitor.send(first + "/withdraw", first + "/withdraw", Map.of("version", "1"));
    assertThat(gone.statusCode()).isEqualTo(303);
    added("programme", "lawn", programme("Summer", "2015-06-01"));
    HttpResponse<String> back = visitor.send(first, first + "/restore", Map.of("version", "2"));
    assertThat(back.statusCode()).isEqualTo(422);
    assertThat(back.body()).contains(TAKEN);
    assertThat(programmes()).extracting(sheet -> sheet.content().name()).doesNotContain("High");
  }

  @Test
  void twoOfADayThatTheBookHasAlreadyMayBeCorrected() throws Exception {
    String first = added("programme", "lawn", programme("Summer", "2015-06-01"));
    String id = first.substring(first.lastIndexOf('/') + 1);
    ProgrammeSheet same =
        book.read(reading -> reading.find(Kind.PROGRAMME, id)).orElseThrow().content();
    String twin = "00000000-0000-4000-8000-00000000000b";
    book.write("Ada", writing -> writing.add(Kind.PROGRAMME, twin, same));
    assertThat(correct("/sheets/" + twin, programme("High", "2015-06-01")).statusCode())
        .isEqualTo(303);
    assertThat(programmes()).extracting(sheet -> sheet.content().name()).contains("High");
  }

  private static Map<String, String> programme(String name, String from) {
    return Map.of("name", name, "from", from, "mowing.heightMm", "64");
  }

  private HttpResponse<String> correct(String page, Map<String, String> given) throws Exception {
    Map<String, String> fields = new HashMap<>(given);
    fields.put("version", "1");
    return visitor.send(page + "/correct", page, fields);
  }

  private List<Sheet<ProgrammeSheet>> programmes() {
    return book.read(reading -> reading.ofLawn(Kind.PROGRAMME, owner("lawn")));
  }
}
