package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import leafturn.quantity.Units;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class RoundOfLawnsTest {
  private static final LocalDate TODAY = LocalDate.of(2015, 5, 29);

  @Test
  void theLawnOnWhichAThirdIsSoonestReachedComesFirstAndThoseToLeaveComeLast() {
    RoundOfLawns round =
        round(
            lawn("left-alone", Choice.LEAVE_ALONE, Spread.exactly(0)),
            lawn("no-third-in-sight", Choice.MOW_AND_RETURN, null),
            lawn("in-a-week", Choice.WAIT_AND_RETURN, new Spread(6, 7, 9)),
            lawn("perhaps-tomorrow", Choice.MOW_AND_COLLECT, new Spread(1, 9, 12)));
    assertThat(round.mostUrgentFirst())
        .extracting(LawnOnRound::slug)
        .containsExactly("perhaps-tomorrow", "in-a-week", "no-third-in-sight", "left-alone");
  }

  @Test
  void ofLawnsPastTheirLimitTheOneFurthestPastItComesFirst() {
    Spread now = Spread.exactly(0);
    RoundOfLawns round =
        round(
            lawn("a-little", Choice.MOW_AND_RETURN, now, 70),
            lawn("by-far", Choice.RAISE_AND_COLLECT, now, 138),
            lawn("half", Choice.RAISE_AND_CUT_TWICE, now, 100));
    assertThat(round.mostUrgentFirst())
        .extracting(LawnOnRound::slug)
        .containsExactly("by-far", "half", "a-little");
  }

  @Test
  void aLawnIsFoundByItsAddress() {
    RoundOfLawns round = round(lawn("front", Choice.LEAVE_ALONE, null));
    assertThat(round.lawn("front")).isPresent();
    assertThat(round.lawn("back")).isEmpty();
  }

  @Test
  void twoLawnsCannotShareAnAddress() {
    LawnOnRound lawn = lawn("front", Choice.LEAVE_ALONE, null);
    assertThatThrownBy(() -> round(lawn, lawn)).hasMessageContaining("\"front\"");
  }

  @Test
  void aLawnWithoutACallTakesItsAddressToo() {
    LawnOnRound lawn = lawn("front", Choice.LEAVE_ALONE, null);
    LawnWithoutCall twin = new LawnWithoutCall("front", "Property", "Lawn", "no weather", false);
    assertThatThrownBy(
            () -> new RoundOfLawns("Maud", TODAY, "made up", "", List.of(lawn), List.of(twin)))
        .hasMessageContaining("\"front\"");
  }

  @Test
  void aRoundIsEmptyWithoutAnyLawn() {
    LawnWithoutCall lawn = new LawnWithoutCall("front", "Property", "Lawn", "no weather", false);
    assertThat(round().isEmpty()).isTrue();
    assertThat(new RoundOfLawns("", TODAY, "", "", List.of(), List.of(lawn)).isEmpty()).isFalse();
  }

  @Test
  void aLawnInAnotherTimeZoneMayBeOnAnotherDay() {
    LawnOnRound lawn = lawn("front", Choice.LEAVE_ALONE, null);
    RoundOfLawns round =
        new RoundOfLawns("Maud", TODAY.plusDays(1), "made up", "", List.of(lawn), List.of());
    assertThat(round.lawn("front").orElseThrow().call().on()).isEqualTo(TODAY);
  }

  @Test
  void anAddressIsPlain() {
    assertThatThrownBy(() -> lawn("Front Lawn", Choice.LEAVE_ALONE, null))
        .hasMessageContaining("\"Front Lawn\"");
  }

  private static RoundOfLawns round(LawnOnRound... lawns) {
    return new RoundOfLawns("Maud", TODAY, "made up", "", List.of(lawns), List.of());
  }

  @Test
  void aLawnMownTodayNeedsNoDecision() {
    assertThat(lawn("a", Choice.MOW_AND_RETURN, null, 60, TODAY).needsDecision()).isFalse();
    assertThat(lawn("a", Choice.MOW_AND_RETURN, null, 60, TODAY.minusDays(1)).needsDecision())
        .isTrue();
  }

  private static LawnOnRound lawn(String slug, Choice choice, @Nullable Spread mowBy) {
    return lawn(slug, choice, mowBy, 60);
  }

  private static LawnOnRound lawn(
      String slug, Choice choice, @Nullable Spread mowBy, double heightMm) {
    return lawn(slug, choice, mowBy, heightMm, null);
  }

  private static LawnOnRound lawn(
      String slug,
      Choice choice,
      @Nullable Spread mowBy,
      double heightMm,
      @Nullable LocalDate lastMown) {
    Call call =
        new Call(
            TODAY,
            choice,
            null,
            "",
            List.of(),
            List.of(),
            mowBy,
            List.of(),
            List.of(),
            List.of(),
            new Call.Today(heightMm, 50, 10, 0.1, 0.5, 40, 100, false, lastMown, false),
            new Outlook(List.of(), List.of(), Spread.exactly(0)),
            new PossibleSeasons(1, 14, "one year"),
            List.of(),
            Call.Limits.of(CallRules.standard()),
            Units.METRIC,
            Particulars.NONE);
    var description =
        new LawnOnRound.Description("tall fescue", null, "loam", "weekly", "from an assumed start");
    return new LawnOnRound(slug, "Property", "Lawn", description, "", call);
  }
}
