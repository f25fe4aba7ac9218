package leafturn.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import leafturn.quantity.Units;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.ProductKind;
import leafturn.records.sheet.Sight;
import org.junit.jupiter.api.Test;

class LogEntryWordsTest {
  private static LogSheet entry(Done done) {
    return new LogSheet("lawn", LocalDate.of(2015, 5, 20), null, done, null, List.of());
  }

  @Test
  void aMowingTellsHeightsAndWhereTheClippingsWent() {
    LogSheet mown = entry(new Done.Mown(112.0, 50.8, 0, 1.0, 22.5, "the heap", 35.0, true));
    assertThat(LogEntryWords.headline(mown, Units.METRIC)).isEqualTo("Mown, collected");
    assertThat(LogEntryWords.details(mown, Units.METRIC))
        .containsExactly(
            "from 112\u202fmm to 50.8\u202fmm",
            "in two passes",
            "1 bag",
            "22.5\u202fkg",
            "to the heap",
            "35 minutes");
    assertThat(LogEntryWords.details(mown, Units.US))
        .contains("from 4.41\u202fin to 2\u202fin", "49.6\u202flb");
  }

  @Test
  void whatIsNotKnownIsLeftOut() {
    LogSheet mown = entry(new Done.Mown(null, null, 0.5, null, null, null, null, false));
    assertThat(LogEntryWords.headline(mown, Units.METRIC)).isEqualTo("Mown, 50\u202f% returned");
    assertThat(LogEntryWords.details(mown, Units.METRIC)).isEmpty();
  }

  @Test
  void aTreatmentTellsTheLabelsInterval() {
    LogSheet treated =
        entry(new Done.Treated("Product A", ProductKind.HERBICIDE, null, 21, 3, false, false, 3));
    assertThat(LogEntryWords.details(treated, Units.METRIC))
        .containsExactly(
            "Product A",
            "herbicide",
            "21 days until clippings may be used, by the label",
            "3 mowings until clippings may be used, by the label",
            "3 days before mowing, by the label");
  }

  @Test
  void whatWasSeenIsNamed() {
    LogSheet seen =
        entry(
            new Done.Observed(
                List.of(Sight.SEED_HEADS, Sight.WET), List.of(Sight.GROUND_FROST), 0.3, 84.0));
    assertThat(LogEntryWords.headline(seen, Units.METRIC))
        .isEqualTo("Observed: annual bluegrass in seed, wet leaves, no ground frost");
    assertThat(LogEntryWords.details(seen, Units.METRIC))
        .containsExactly("leaves hide 30\u202f% of the turf", "stands at 84\u202fmm");
  }
}
