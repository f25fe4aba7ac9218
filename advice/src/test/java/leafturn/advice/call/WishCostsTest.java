package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;

import leafturn.model.grass.Species;
import org.junit.jupiter.api.Test;

/** What returning and collecting cost is told of the cuts that are advised. */
class WishCostsTest {
  private static final Circumstances.Wishes NO_CLIPPINGS =
      new Circumstances.Wishes(true, Circumstances.HeapHeat.NOT_KNOWN);

  private static String costs(Call call) {
    return call.reasons().stream()
        .filter(reason -> reason.headline().equals("What each costs"))
        .map(Reason::meaning)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void cutsInStepsArePricedTogether() {
    Situation may =
        Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 5, 7).mown(12, 110).dry(5, 20, 9, 21);
    Call call = may.facts(Circumstances.NONE.withWishes(NO_CLIPPINGS)).call();
    assertThat(call.particulars().cuts()).hasSize(2);
    assertThat(costs(call)).contains("return both cuts from today on", "collect both cuts fills");
  }

  @Test
  void collectingHasNoPriceWhereItIsForbidden() {
    Situation may = Situation.of(Species.TALL_FESCUE, 76, 5, 15).mown(11, 100).dry(5, 20, 9, 21);
    Circumstances treated = Treated.withHerbicide(may.on().minusDays(5), null);
    Call call = may.facts(treated.withWishes(NO_CLIPPINGS)).call();
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_RETURN);
    assertThat(costs(call))
        .contains("To collect is no choice: the clippings are held by")
        .doesNotContain("bag");
  }
}
