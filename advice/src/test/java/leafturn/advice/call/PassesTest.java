package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import leafturn.model.grass.Species;
import org.junit.jupiter.api.Test;

/** A mower that always goes over the lawn twice leaves what two passes leave, and no more work. */
class PassesTest {
  private static Situation tall() {
    return Situation.of(Species.TALL_FESCUE, 76, 5, 20).mown(7, 145).dry(4, 8, 12, 22);
  }

  private static Optional<Option> option(Call call, Choice choice) {
    return call.options().stream().filter(option -> option.choice() == choice).findFirst();
  }

  @Test
  void returningWithSuchAMowerIsTheChoiceOfTwoPassesWithAnother() {
    Call twice = tall().twiceOver().call();
    Option.Outcome returned = option(twice, Choice.MOW_AND_RETURN).orElseThrow().outcome();
    Option.Outcome passes = option(tall().call(), Choice.DOUBLE_PASS).orElseThrow().outcome();
    assertThat(returned.clumpIndex()).isEqualTo(passes.clumpIndex());
    assertThat(returned.minutes()).isEqualTo(passes.minutes());
    assertThat(returned.inSight()).isEqualTo(passes.inSight());
    assertThat(option(twice, Choice.DOUBLE_PASS)).isEmpty();
  }
}
