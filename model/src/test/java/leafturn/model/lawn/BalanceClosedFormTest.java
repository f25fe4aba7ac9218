package leafturn.model.lawn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import leafturn.model.Flows;
import leafturn.model.Stores;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The account of a day that does not close is refused, and so is a negative store. */
class BalanceClosedFormTest {
  private static final double STOCK = 100;

  private final SplittableRandom random = new SplittableRandom(1);
  private final DailyTerms terms =
      DailyTerms.asRecorded(
          new SiteClimate(RandomWeather.any(random, 2), RandomLawn.site(random)), 0, 2, Double.NaN);
  private final double[] stores = new double[Stores.COUNT];
  private final double[] flows = new double[Flows.COUNT];
  private final Balance balance = new Balance();

  @BeforeEach
  void open() {
    Arrays.fill(stores, STOCK);
    balance.open(stores);
  }

  @Test
  void aDayOnWhichNothingHappensCloses() {
    balance.close(stores, flows, terms, 0);

    assertThat(balance.worst()).containsOnly(0);
  }

  @ParameterizedTest
  @CsvSource({
    "0, g C", "9, g C", "10, g N", "21, g N", "22, g P", "29, g P", "30, g K", "32, g K", "33, mm"
  })
  void matterFromNowhereIsRefusedWithItsDayAndSize(int store, String unit) {
    stores[store] += 0.25;

    assertThatThrownBy(() -> balance.close(stores, flows, terms, 1))
        .isInstanceOf(BalanceException.class)
        .hasMessageContaining("the account of " + terms.date(1) + " does not close")
        .hasMessageContaining("0.25 " + unit);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 2, 0",
    "9, 1, 3, 0",
    "10, 4, 7, 1",
    "15, 5, 8, 1",
    "19, 6, 9, 1",
    "20, 6, 10, 1",
    "22, 11, 13, 2",
    "29, 12, 14, 2",
    "30, 15, 17, 3",
    "32, 16, 18, 3"
  })
  void whatEntersAndLeavesIsCounted(int store, int entering, int leaving, int element) {
    flows[entering] = 3;
    flows[leaving] = 1;
    stores[store] += 2;
    balance.close(stores, flows, terms, 0);
    assertThat(balance.worst()[element]).isLessThan(1e-12);

    stores[store] += 2.5;
    assertThatThrownBy(() -> balance.close(stores, flows, terms, 1))
        .isInstanceOf(BalanceException.class);
    assertThat(balance.worst()[element]).isCloseTo(0.5, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"19, 21", "20, 22", "19, 23"})
  void theWaterStoreCountsWhatIsMissing(int entering, int leaving) {
    flows[entering] = 3;
    flows[leaving] = 1;
    stores[Stores.DEPLETION_MM] -= 2;

    balance.close(stores, flows, terms, 0);

    assertThat(balance.worst()[4]).isLessThan(1e-12);
  }

  @Test
  void roundingOfALargeStoreIsAllowedAndNoMore() {
    stores[Stores.HUMUS_N] = 1e6;
    balance.open(stores);
    stores[Stores.HUMUS_N] += 0.9e-6;
    balance.close(stores, flows, terms, 0);

    stores[Stores.HUMUS_N] += 1.2e-6;
    assertThatThrownBy(() -> balance.close(stores, flows, terms, 1))
        .isInstanceOf(BalanceException.class);
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "18, 19", "32, 30"})
  void aNegativeStoreIsRefusedByName(int store, int other) {
    double moved = STOCK + 0.5;
    stores[store] -= moved;
    stores[other] += moved;

    assertThatThrownBy(() -> balance.close(stores, flows, terms, 0))
        .isInstanceOf(BalanceException.class)
        .hasMessageContaining(Stores.name(store) + " is -0.5 at the end of " + terms.date(0));
  }

  @Test
  void aNegativeZeroIsNoDebt() {
    stores[Stores.NITRATE_N] = -0.0;
    stores[Stores.AMMONIUM_N] += STOCK;

    balance.close(stores, flows, terms, 0);

    assertThat(balance.worst()[1]).isLessThan(1e-12);
  }
}
