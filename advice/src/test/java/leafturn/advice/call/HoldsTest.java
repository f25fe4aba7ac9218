package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import leafturn.advice.call.Treatment.Group;
import leafturn.advice.call.Treatment.Kind;
import leafturn.advice.call.Treatment.Label;
import leafturn.model.grass.Species;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A label's hold on clippings is told with everything that has to come first. */
class HoldsTest {
  private static final LocalDate ON = LocalDate.of(2015, 5, 20);

  private static Treatment treatment(
      int day, String product, @Nullable Integer mowings, @Nullable Integer days) {
    return new Treatment(
        LocalDate.of(2015, 5, day),
        product,
        Kind.HERBICIDE,
        Group.OTHER,
        new Label(mowings, days, false, null, true));
  }

  private static Holds holds(List<LocalDate> mowings, Treatment... treatments) {
    List<Hold> all = Hold.on(ON, List.of(treatments), mowings, CallRules.standard());
    return new Holds(ON, ON, all);
  }

  @Test
  void mowingsAndDaysOfALabelAreBothAskedFor() {
    List<LocalDate> mowings = new ArrayList<>(List.of(ON.minusDays(8), ON.minusDays(4)));
    Treatment both = treatment(10, "sedge-ex", 3, 21);
    assertThat(holds(mowings, both).until())
        .isEqualTo(
            "applied on 10 May. 1 more mowing has to be returned and 11 more days have to pass (until 31 May) before clippings may be used elsewhere: collected ones have nowhere to go.");
    mowings.add(ON);
    assertThat(holds(mowings, both).until())
        .contains("10 May. 11 more days have to pass (until 31 May) before")
        .doesNotContain("mowing");
    assertThat(holds(mowings, treatment(1, "sedge-ex", 3, 19)).none()).isTrue();
  }

  @Test
  void daysOfALaterCutAreCountedFromTheDayOfTheCall() {
    LocalDate cut = ON.plusDays(3);
    List<Hold> all =
        Hold.on(cut, List.of(treatment(10, "sedge-ex", 0, 16)), List.of(), CallRules.standard());
    assertThat(new Holds(ON, cut, all).until())
        .contains(" 6 more days have to pass (until 26 May)");
  }

  @Test
  void onlyTheCutsThatAProductStillHoldsAreSaidToHaveNowhereToGo() {
    Situation lawn = Situation.of(Species.TALL_FESCUE, 51, 5, 28).mown(20, 138).dry(3, 14, 12, 24);
    for (int mowings : new int[] {1, 5}) {
      Call call =
          lawn.facts(
                  Circumstances.NONE.withTreatments(
                      List.of(treatment(10, "sedge-ex", mowings, null))))
              .call();
      assertThat(call.particulars().cuts()).hasSizeGreaterThan(1);
      assertThat(call.sentence())
          .contains(
              mowings == 1
                  ? "for the clippings of the first have nowhere to go"
                  : "for the clippings have nowhere to go");
    }
  }

  @Test
  void clumpsOfHeldStepsAreOneReasonByTheLimitTheyBreak() {
    for (int heightMm : new int[] {150, 160, 170, 180}) {
      Situation lawn =
          Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 6, 3).mown(22, heightMm).dry(2, 8, 12, 24);
      Call call =
          lawn.facts(
                  Treated.withClopyralid(lawn.on().minusDays(26), Treatment.Label.UNREAD)
                      .withVisits(Visits.on(lawn.on().plusDays(2))))
              .call();
      assertThat(call.reasons())
          .filteredOn(reason -> reason.headline().startsWith("Clump index"))
          .singleElement()
          .satisfies(
              reason -> {
                double index = Double.parseDouble(reason.headline().substring(12));
                assertThat(reason.against()).isTrue();
                assertThat(reason.threshold())
                    .startsWith(index > 1.5 ? "limit 1.5 at" : "limit 1 at");
              });
    }
  }

  @Test
  void aHoldThatIsOverByTheDayOfMowingIsToldWithItsEnd() {
    Situation lawn =
        Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 5, 21).mown(9, 88).dry(3, 9, 10, 21);
    Call call =
        lawn.facts(Circumstances.NONE.withTreatments(List.of(treatment(10, "sedge-ex", null, 14))))
            .saw(
                new Sighting(
                    lawn.on(), LocalTime.of(13, 0), Sight.ANNUAL_BLUEGRASS_SEED_HEADS, true))
            .call();
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_COLLECT);
    assertThat(call.mowOn()).isEqualTo(LocalDate.of(2015, 5, 24));
    assertThat(call.sentence()).contains("Until Sunday the clippings are held by sedge-ex.");
    assertThat(Situation.reason(call, "held").headline())
        .isEqualTo("Clippings held by sedge-ex until Sunday");
    assertThat(call.particulars().placing().offTheLawn()).isTrue();
    assertThat(call.particulars().placing().sentence())
        .startsWith("Clippings have nowhere to go until Sunday: sedge-ex keeps them on the lawn.")
        .contains("After that: ");
  }

  @Test
  void everyProductThatHoldsIsTold() {
    Holds holds =
        holds(
            List.of(ON.minusDays(1)),
            treatment(18, "mossgone", 4, null),
            treatment(12, "sedge-ex", null, 9),
            treatment(2, "clear-all", 1, 18));
    assertThat(holds.products()).isEqualTo("sedge-ex and mossgone");
    assertThat(holds.until())
        .contains("sedge-ex, applied on 12 May: 1 more day has to pass (until 21 May) first.")
        .contains(
            "mossgone, applied on 18 May: 3 more mowings have to be returned first.",
            "before all of that");
    assertThat(holds.that("keeps", "keep")).isEqualTo("sedge-ex and mossgone keep");
  }

  @Test
  void aCallNamesBothProducts() {
    Situation lawn = Situation.of(Species.TALL_FESCUE, 76, 5, 20).mown(6, 104).dry(3, 8, 10, 21);
    Call call =
        lawn.facts(
                Circumstances.NONE.withTreatments(
                    List.of(treatment(12, "sedge-ex", 3, 30), treatment(18, "mossgone", 2, 10))))
            .call();
    assertThat(call.sentence()).contains("the clippings are held by sedge-ex and mossgone.");
    assertThat(call.particulars().placing().sentence()).contains("sedge-ex and mossgone keep them");
    assertThat(call.reasons())
        .filteredOn(reason -> reason.ruleId().equals("held"))
        .singleElement()
        .satisfies(
            reason ->
                assertThat(reason.meaning())
                    .contains("sedge-ex, applied on 12 May:", "mossgone, applied on 18 May:"));
  }

  @Test
  void aLastingProductIsHeldAsLongAsItsLabelSays() {
    Treatment lasting =
        new Treatment(
            ON.minusDays(500),
            "clopyralid",
            Kind.HERBICIDE,
            Group.PYRIDINE_ACID,
            new Label(null, 1000, false, null, true));
    assertThat(holds(List.of(), lasting).all())
        .singleElement()
        .extracting(Hold::daysLeft)
        .isEqualTo(500L);
  }
}
