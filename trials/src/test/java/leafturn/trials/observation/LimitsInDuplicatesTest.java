package leafturn.trials.observation;

import static leafturn.trials.observation.ObservedYards.SOIL_K;
import static leafturn.trials.observation.ObservedYards.sample;
import static leafturn.trials.observation.ObservedYards.sentences;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;

import java.util.List;
import java.util.Map;
import leafturn.trials.observation.Remark.Weight;
import org.junit.jupiter.api.Test;

/** Duplicates of a laboratory of which all or some lie below detection. */
class LimitsInDuplicatesTest {
  @Test
  void duplicatesOfWhichSomeLieBelowDetection() {
    List<Reading> readings =
        List.of(
            sample("AAAAAAA", "<20", 1),
            sample("AAAAAAA", "23", 2),
            sample("BBBBBBB", "<20", 1),
            sample("BBBBBBB", "<10", 2),
            sample("CCCCCCC", "40", null));
    LaboratoryDuplicates known =
        LaboratoryDuplicates.of(OutcomeReadings.of(SOIL_K, readings, null).readings());
    assertThatList(known.samples().stream().map(each -> each.withLimitsAt(0.5)).toList())
        .containsExactly((10 + 23) / 2.0, 7.5, 40.0);
    assertThatList(known.samples().stream().map(CleanReading::belowDetection).toList())
        .containsExactly(true, true, false);
    assertThat(known.degreesOfFreedom()).isZero();
    LaboratoryDuplicates blind = known.blind(Map.of("CCCCCCC", "AAAAAAA"));
    assertThat(blind.samples().get(0).withLimitsAt(0)).isEqualTo((11.5 + 40) / 2);
    assertThat(blind.samples().get(0).isPartlyBelow()).isTrue();
    assertThat(blind.samples().get(1).isPartlyBelow()).isFalse();
    assertThat(sentences(known.remarks(blind, "mg/kg"), Weight.NOTE))
        .satisfiesExactly(each -> assertThat(each).contains("Of 1 sample", "half their limit"));
    assertThat(LaboratoryDuplicates.areFarApart(readings.get(2), readings.get(3))).isFalse();
    assertThat(LaboratoryDuplicates.areFarApart(readings.get(0), sample("AAAAAAA", "60", 2)))
        .isTrue();
  }
}
