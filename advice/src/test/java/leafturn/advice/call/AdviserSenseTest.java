package leafturn.advice.call;

import static leafturn.advice.call.Situation.all;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import leafturn.advice.call.Circumstances.DryFeed;
import leafturn.advice.call.Circumstances.HeapHeat;
import leafturn.advice.call.Circumstances.Wishes;
import leafturn.model.grass.Species;
import leafturn.model.lawn.LogEntry;
import org.junit.jupiter.api.Test;

/** What an experienced adviser would not leave out or get wrong; common practice, no source. */
class AdviserSenseTest {
  private static final Circumstances NOTHING = Circumstances.NONE;

  private static Situation julyDrought() {
    return Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 7, 18).dry(30, 6, 22, 33);
  }

  @Test
  void wiltingGrassIsNotMownAndGetsWater() {
    Situation july = julyDrought().mown(17, 80);
    Call call = july.saw(Sighting.of(Sight.WILTING, july.on())).call();
    assertThat(call.choice()).isEqualTo(Choice.LEAVE_ALONE);
    assertThat(call.sentence()).startsWith("Do not mow, and keep off: the grass wilts; water it");
    assertThat(call.reasons().get(0).headline()).isEqualTo("Wilting");
    assertThat(call.particulars().watering()).isNotEmpty();
    assertThat(call.options()).extracting(Option::remark).contains("wilting");
    assertThat(String.join(" ", call.wouldChange())).contains("stands up again", "would come off");
    assertThat(String.join(" ", call.cautions())).contains("play off wilted grass");
    assertThat(all(call)).doesNotContain("at rest in drought", "turns green", "off grass at rest");
    Call rest = july.facts(NOTHING).saw(Sighting.of(Sight.DORMANT, july.on())).call();
    assertThat(rest.options()).extracting(Option::remark).contains("at rest in drought");
    assertThat(String.join(" ", rest.wouldChange())).contains("turns green after rain");
    assertThat(String.join(" ", rest.cautions())).contains("off grass at rest");
    Call old = july.facts(NOTHING).saw(Sighting.of(Sight.WILTING, july.on().minusDays(5))).call();
    assertThat(all(old)).doesNotContain("wilt");
  }

  @Test
  void theDriestLawnsAreToldAboutWaterToo() {
    Call banned =
        julyDrought()
            .mown(17, 80)
            .facts(NOTHING.withWateringLimits(new WateringLimits(true, Set.of(), null, null)))
            .call();
    assertThat(banned.particulars().watering())
        .singleElement()
        .asString()
        .contains("atering is not allowed");
    assertThat(julyDrought().mown(17, 66).call().particulars().watering()).isNotEmpty();
  }

  @Test
  void rainSinceRestWasSeenAsksForALookNow() {
    Situation august = Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 8, 10).mown(30, 68);
    Sighting rest = Sighting.of(Sight.DORMANT, august.on().minusDays(5));
    assertThat(august.dry(40, 0, 18, 30).saw(rest).call().sentence()).contains("look again after");
    assertThat(august.rainBefore(25).call().sentence())
        .endsWith("rain has fallen since that was seen, so look now whether it turns green.");
  }

  @Test
  void theVisitAfterALabelsWaitIsNamed() {
    Situation june = Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 6, 11).mown(7, 82);
    Circumstances treated = Treated.withHerbicide(june.on().minusDays(1), 3);
    Call fridays = june.facts(treated.withVisits(Visits.every(DayOfWeek.FRIDAY))).call();
    assertThat(fridays.sentence()).startsWith("Wait until Friday 19 June, then mow");
    assertThat(Situation.all(fridays)).contains("its label asks not to mow before 13 June");
    Circumstances lasting = Treated.withHerbicide(june.on().minusDays(1), 30);
    assertThat(june.facts(lasting.withVisits(Visits.every(DayOfWeek.FRIDAY))).call().sentence())
        .startsWith(
            "Do not mow yet: the label of a broad-leaf herbicide asks to wait until 10 July");
  }

  @Test
  void grassThatOutgrowsItsSeasonIsSaidToDoSo() {
    Situation february = Situation.of(Species.PERENNIAL_RYEGRASS, 50, 2, 20).dry(3, 12, 6, 15);
    assertThat(february.mown(100, 78).call().sentence())
        .startsWith("Leave it: the mowing season begins on 1 March. Yet more than a third");
    assertThat(Situation.of(Species.PERENNIAL_RYEGRASS, 50, 1, 10).mown(50, 52).call().sentence())
        .doesNotContain("Yet");
  }

  @Test
  void whatIsOnlyLikelyInSeedIsNotToldAsSeen() {
    Place unwanted =
        new Place(Double.NaN, Place.Deck.NOT_KNOWN, Place.AnnualBluegrass.UNWANTED, false);
    Situation may = Situation.of(Species.PERENNIAL_RYEGRASS, 64, 5, 5).mown(7, 84).dry(2, 4, 9, 20);
    Call likely = may.facts(NOTHING.withPlace(unwanted)).call();
    assertThat(likely.sentence()).contains("annual bluegrass is likely in seed");
    Call seen = may.saw(Sighting.of(Sight.ANNUAL_BLUEGRASS_SEED_HEADS, may.on())).call();
    assertThat(seen.sentence()).contains("annual bluegrass is in seed");
  }

  @Test
  void granulesAreWashedInBeforeCutsInSteps() {
    Situation may = Situation.of(Species.TALL_FESCUE, 76, 5, 8).mown(7, 125).dry(2, 5, 10, 21);
    Call call = may.facts(NOTHING.withDryFeed(new DryFeed(may.on().minusDays(1), 6))).call();
    assertThat(call.sentence())
        .contains("Water the feed in today, with 6 mm", "before you mow", "return each time")
        .doesNotContain("wait only for rain");
  }

  @Test
  void heldClippingsAreNobodysRightToCollect() {
    Situation may = Situation.of(Species.TALL_FESCUE, 76, 5, 20).mown(6, 96).dry(2, 5, 10, 21);
    Circumstances wish =
        Treated.withHerbicide(may.on().minusDays(2), null)
            .withWishes(new Wishes(true, HeapHeat.NOT_KNOWN));
    assertThat(may.facts(wish).call().sentence())
        .contains("Nothing leaves the lawn")
        .doesNotContain("right");
  }

  @Test
  void aHeightBelowTheCutIsNoSignOfRestAndIsTold() {
    Situation june = Situation.of(Species.TALL_FESCUE, 76, 6, 12);
    Call call = june.mown(7, 60).call();
    assertThat(call.sentence()).doesNotContain("at rest");
    assertThat(call.notes())
        .anyMatch(
            note ->
                note.startsWith("On 12 June 60 mm was measured, below the cut height of 76 mm."));
  }

  @Test
  void aVisitBetweenTheUsualOnesIsAskedForWhereTheNextIsTooLate() {
    Situation friday =
        Situation.of(Species.TALL_FESCUE, 76, 5, 15)
            .mown(7, 110)
            .rainBefore(20)
            .rule("soft-ground", 5);
    Call call =
        friday.rainToday(30).facts(NOTHING.withVisits(Visits.every(DayOfWeek.FRIDAY))).call();
    assertThat(call.mowOn()).isEqualTo(LocalDate.of(2015, 5, 22));
    assertThat(call.wouldChange()).anyMatch(text -> text.startsWith("If somebody can come sooner"));
  }

  @Test
  void seedlingsAreNeitherLeftToRestNorCollectedNorMownBefore() {
    Situation september =
        Situation.of(Species.PERENNIAL_RYEGRASS, 60, 9, 25)
            .logged(new LogEntry.Measured(LocalDate.of(2015, 9, 25), 80))
            .dry(30, 5, 10, 22);
    Place seeded =
        new Place(Double.NaN, Place.Deck.NOT_KNOWN, Place.AnnualBluegrass.NOT_KNOWN, true);
    Call call = september.facts(NOTHING.withPlace(seeded)).call();
    assertThat(all(call)).doesNotContain("let it go to rest", "raise the deck, collect");
    assertThat(call.today().lastMown()).isNull();
    assertThat(call.particulars().watering())
        .anyMatch(text -> text.contains("Seedlings must not dry out"));
  }

  @Test
  void furtherCutsLittleAboveTheHighestDeckAreSetToIt() {
    List<Particulars.Cut> cuts =
        Situation.of(Species.TALL_FESCUE, 76, 6, 25)
            .mown(42, 300)
            .dry(3, 10, 12, 24)
            .call()
            .particulars()
            .cuts();
    assertThat(cuts).hasSize(3);
    assertThat(cuts.get(1).toMm()).isLessThanOrEqualTo(DeckHeights.HIGHEST_MM);
  }
}
