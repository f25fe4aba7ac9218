package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.ProgrammeSheet;
import org.junit.jupiter.api.Test;

class PlaceRoomTest extends HeronBankSite {
  @Test
  void theRegisterLeadsToPropertiesAndTheseToAllThatIsKept() throws Exception {
    assertThat(visitor.read("/lawns"))
        .contains("href=\"/properties/heron-bank\"", "href=\"/lawns/heron-bank-play\"")
        .contains("href=\"/properties/new\"");
    assertThat(visitor.read("/properties/heron-bank"))
        .contains("<h1>Heron Bank</h1>", "40.78", "Play lawn", "Verge", "900\u202fm²")
        .contains("/lawns/heron-bank-play/edit", "/properties/heron-bank/lawns/new")
        .contains("kind=visit&amp;lawn=", "kind=intake&amp;property=", "none yet");
  }

  @Test
  void aVisitTellsMeansAndShares() throws Exception {
    String address =
        added(
            "visit",
            "lawn",
            Map.of(
                "day", "2015-05-20",
                "heightsMm", "70 80 90",
                "cover.grass", "84",
                "cover.bare", "16",
                "thatchPlugsMm", "10; 12; 14"));
    assertThat(visitor.read(address))
        .contains("Mean height", "80\u202fmm, standard deviation 10\u202fmm")
        .contains("84\u202f% (95\u00a0% interval 76\u202f% to 90\u202f%)", "70, 80, 90\u202fmm")
        .contains("Mean thatch", "12\u202fmm");
    added("thatch", "lawn", Map.of("day", "2015-05-01", "plugsMm", "17", "method", "pressed"));
    assertThat(visitor.read("/lawns/heron-bank-play"))
        .contains("12\u202fmm on Wednesday 20 May 2015, the mean of 3 plugs")
        .doesNotContain("17\u202fmm");
    added("thatch", "lawn", Map.of("day", "2015-05-21", "plugsMm", "17", "method", "pressed"));
    assertThat(visitor.read("/lawns/heron-bank-play"))
        .contains("17\u202fmm on Thursday 21 May 2015, the mean of 1 plug");
  }

  @Test
  void bedsHeapsIntakeAndThatchAreAddedAndListed() throws Exception {
    added("bed", "property", Map.of("name", "Long border", "outline", "10 x 2"));
    added("heap", "property", Map.of("name", "By the shed", "heapKind", "hot"));
    String intake =
        added(
            "intake",
            "property",
            Map.of(
                "day", "2015-03-01",
                "children", "true",
                "dogs", "false",
                "aims", "tidy",
                "productsUsed[1].product", "Weedkiller"));
    added("thatch", "lawn", Map.of("day", "2015-05-01", "plugsMm", "12 15", "method", "pressed"));
    assertThat(visitor.read("/properties/heron-bank"))
        .contains(
            "Long border", "By the shed", "Intake of Sunday 1 March 2015", "Thatch on Friday");
    assertThat(visitor.read(intake))
        .contains("Do children play there?", "yes", "Weedkiller", "Tidy");
  }

  @Test
  void aLawnIsAddedWithItsOutlineAndGetsItsAdvice() throws Exception {
    Map<String, String> fields =
        owned(
            "lawn",
            "property",
            Map.of(
                "name", "Croquet lawn",
                "grass", "fine fescue",
                "mixture[1].grass", "perennial ryegrass",
                "mixture[1].percent", "20",
                "outline", "20 x 30"));
    HttpResponse<String> added = visitor.send("/properties/heron-bank/lawns/new", ADD, fields);
    assertThat(added.statusCode()).isEqualTo(303);
    String address = added.headers().firstValue("Location").orElseThrow();
    assertThat(address).isEqualTo("/lawns/heron-bank-croquet-lawn");
    assertThat(visitor.read(address))
        .contains(
            "Croquet lawn", "fine fescue 80\u00a0%, perennial ryegrass 20\u00a0%, 600\u202fm²")
        .contains("The mixture is reckoned as if all of it were fine fescue.");
    assertThat(visitor.send("/properties/heron-bank/lawns/new", ADD, fields).statusCode())
        .as("the same form sent twice")
        .isEqualTo(303);
    List<Sheet<LawnSheet>> lawns =
        book.read(reading -> reading.ofProperty(Kind.LAWN, owner("property")));
    assertThat(lawns).hasSize(3);
    assertThat(visitor.read("/sheets/" + fields.get("id"))).contains("<figure", "600\u202fm²");
  }

  @Test
  void aSecondLawnIsAskedForItsKeepingWithWhatTheFirstHas() throws Exception {
    String blank = visitor.read("/properties/heron-bank/lawns/new");
    LawnSheet first =
        book.read(reading -> reading.at(Kind.LAWN, "heron-bank-play")).orElseThrow().content();
    assertThat(blank)
        .contains("How it is kept", "name=\"programme.mowing.heightMm\"", "value=\"51\"")
        .contains("Filled in: as for Play lawn.", "as for Play lawn</span></label>");
    Map<String, String> fields =
        owned(
            "lawn",
            "property",
            Map.of(
                "name", "Croquet lawn",
                "grass", "fine fescue",
                "mower.bagLitres", "60",
                "programme.mowing.heightMm", "30",
                "programme.mowing.clippings.returnedShare", "0",
                "programme.otherwiseAlike", "true"));
    for (int sent = 0; sent < 2; sent++) {
      assertThat(visitor.send("/properties/heron-bank/lawns/new", ADD, fields).statusCode())
          .isEqualTo(303);
    }
    List<Sheet<ProgrammeSheet>> kept =
        book.read(reading -> reading.ofLawn(Kind.PROGRAMME, String.valueOf(fields.get("id"))));
    assertThat(kept).as("sent twice, kept once").hasSize(1);
    ProgrammeSheet programme = kept.get(0).content();
    ProgrammeSheet ofFirst = latest(Kind.PROGRAMME, "lawn").content();
    assertThat(programme.mowing().heightMm()).isEqualTo(30);
    assertThat(programme.mowing().clippings().returnedShare()).isZero();
    assertThat(programme.feeding()).isEqualTo(ofFirst.feeding()).isNotEmpty();
    assertThat(programme.mowingDays()).isEqualTo(ofFirst.mowingDays());
    assertThat(first.grass()).isNotEqualTo("fine fescue");
    assertThat(visitor.read("/lawns/heron-bank-croquet-lawn")).contains("30\u202fmm");
  }

  @Test
  void faultsOfASecondLawnAndItsKeepingAreToldAtOnce() throws Exception {
    Map<String, String> fields =
        owned(
            "lawn",
            "property",
            Map.of(
                "name", "Croquet lawn",
                "grass", "fine fescue",
                "areaM2", "much",
                "programme.mowing.heightMm", "9000"));
    HttpResponse<String> answer = visitor.send("/properties/heron-bank/lawns/new", ADD, fields);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains("id=\"f-areaM2-fault\"", "id=\"f-programme-mowing-heightMm-fault\"");
    assertThat(
            book.<List<Sheet<LawnSheet>>>read(
                reading -> reading.ofProperty(Kind.LAWN, owner("property"))))
        .hasSize(2);
  }

  @Test
  void anotherProgrammeHoldsFromItsDayAndTheOneBeforeIsKept() throws Exception {
    assertThat(visitor.read("/lawns/heron-bank-play/programme"))
        .contains("value=\"2015-05-28\"", "value=\"51\"");
    added(
        "programme",
        "lawn",
        Map.of(
            "from", "2015-05-28",
            "mowing.heightMm", "90",
            "feeding[2].on", "09-15",
            "feeding[2].slowNGPerM2", "3"));
    List<Sheet<ProgrammeSheet>> kept =
        book.read(reading -> reading.ofLawn(Kind.PROGRAMME, owner("lawn")));
    assertThat(kept).hasSize(2);
    assertThat(visitor.read("/lawns/heron-bank-play")).contains("90\u202fmm");
  }

  @Test
  void addressesOfNoPlaceAndKindsThatDoNotFitAreNotFound() throws Exception {
    for (String path :
        List.of(
            ADD,
            ADD + "?kind=visit",
            ADD + "?kind=spell&lawn=" + owner("lawn"),
            ADD + "?kind=visit&property=" + owner("property"),
            ADD + "?kind=log&lawn=" + owner("lawn"),
            ADD + "?kind=property")) {
      assertThat(visitor.ask(path).statusCode()).as(path).isEqualTo(404);
    }
  }

  private <C extends Content> Sheet<C> latest(Kind<C> kind, String owner) {
    List<Sheet<C>> all = book.read(reading -> reading.ofLawn(kind, owner(owner)));
    return all.get(all.size() - 1);
  }
}
