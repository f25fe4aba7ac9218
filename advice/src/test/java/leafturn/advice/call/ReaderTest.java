package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import leafturn.model.lawn.SiteClimate;
import leafturn.quantity.Units;
import org.junit.jupiter.api.Test;

class ReaderTest {
  private static final Pattern METRIC = Pattern.compile("\\d\\s*(mm|cm|m|g|kg|°C|g/m²)(?![\\w²])");

  @Test
  void quantitiesStandInTheReadersUnits() {
    Reader metric = new Reader(Units.METRIC);
    assertThat(metric.height(101.6)).isEqualTo("102 mm");
    assertThat(metric.littleWater(0.42)).isEqualTo("0.4 mm");
    assertThat(metric.temperature(2.25, 1)).isEqualTo("2.3 °C");
    assertThat(metric.onArea(4.94, "nitrogen")).isEqualTo("4.9 g of nitrogen per m²");
    assertThat(metric.onArea(0.153, "")).isEqualTo("0.15 g per m²");
    assertThat(metric.loadLimit(40)).isEqualTo("40 g/m²");
    Reader us = new Reader(Units.US);
    assertThat(us.height(101.6)).isEqualTo("4.0 in");
    assertThat(us.littleWater(0.254)).isEqualTo("0.01 in");
    assertThat(us.temperature(2.25, 1)).isEqualTo("36 °F");
    assertThat(us.onArea(4.8824, "nitrogen")).isEqualTo("1.00 lb of nitrogen per 1000 ft²");
    assertThat(us.loadLimit(40)).isEqualTo("8.2 lb/1000 ft²");
  }

  @Test
  void noSentenceForAReaderOfUsUnitsHoldsAMetricOne() {
    for (int day = 1; day <= 28; day += 3) {
      for (double heightMm : new double[] {80, 112, 135, 170}) {
        LocalDate on = LocalDate.of(2015, 5, day);
        assertThat(sentences(us(on, heightMm))).noneMatch(METRIC.asPredicate());
      }
    }
  }

  @Test
  void readersOfUsUnitsLeaveAndBag() {
    Call call = us(LocalDate.of(2015, 5, 20), 170);
    assertThat(call.sentence()).contains("bag").doesNotContain("collect");
    assertThat(call.options())
        .extracting(Option::title)
        .contains("Today, leave the clippings", "Today, bag")
        .noneMatch(title -> title.contains("return"));
  }

  private static Call us(LocalDate on, double heightMm) {
    return MowingCall.of(
        CallExamples.fescue(),
        new SiteClimate(CallExamples.newYork(), CallExamples.fescue().site()),
        CallExamples.standingAt(on, heightMm),
        new Asked(on, CallRules.standard(), Units.US));
  }

  private static List<String> sentences(Call call) {
    List<String> all = new ArrayList<>(call.wouldChange());
    all.add(call.sentence());
    all.addAll(call.notes());
    all.addAll(call.cautions());
    call.reasons()
        .forEach(
            reason -> all.addAll(List.of(reason.headline(), reason.meaning(), reason.threshold())));
    call.options().forEach(option -> all.add(option.title() + " " + option.remark()));
    return all;
  }
}
