package leafturn.reports;

import java.time.LocalDate;
import java.util.List;
import leafturn.advice.call.Call;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.Particulars;
import leafturn.advice.call.Reason;
import leafturn.advice.call.Spread;
import leafturn.web.SampleRound;
import org.jspecify.annotations.Nullable;

/** The call of a lawn of the sample round, changed in what a test is about. */
public final class ChangedCall {
  private final LawnOnRound lawn;
  private List<Reason> reasons;
  private @Nullable Spread mowBy;
  private Call.Today today;
  private Particulars particulars;

  private ChangedCall(LawnOnRound lawn) {
    this.lawn = lawn;
    Call call = lawn.call();
    reasons = call.reasons();
    mowBy = call.mowBy();
    today = call.today();
    particulars = call.particulars();
  }

  /** The call of a lawn as it stands. */
  public static ChangedCall of(String lawn) {
    return new ChangedCall(SampleRound.get().lawn(lawn).orElseThrow());
  }

  /** Another reason than the ones it has. */
  public ChangedCall because(Reason reason) {
    reasons = List.of(reason);
    return this;
  }

  /** Another day by which it is to be mown, days from the day of the call. */
  public ChangedCall mowBy(@Nullable Spread days) {
    mowBy = days;
    return this;
  }

  /** Another height of the grass and of the cut, mm. */
  public ChangedCall heights(double heightMm, double cutHeightMm) {
    today =
        new Call.Today(
            heightMm,
            cutHeightMm,
            today.thatchMm(),
            today.clippingsShareOfThatch(),
            today.soilWaterFraction(),
            today.soilPhosphorusPpm(),
            today.soilPotassiumPpm(),
            today.possiblyWet(),
            today.lastMown(),
            today.lastMownLogged());
    return this;
  }

  /** Another last safe day. */
  public ChangedCall safeUntil(@Nullable LocalDate day) {
    particulars =
        new Particulars(
            particulars.cuts(),
            day,
            particulars.noSafeDay(),
            particulars.hours(),
            particulars.byTheHour(),
            particulars.conflicts(),
            particulars.watering(),
            particulars.placing(),
            particulars.lying());
    return this;
  }

  /** The changed call. */
  public Call call() {
    Call call = lawn.call();
    return new Call(
        call.on(),
        call.choice(),
        call.mowOn(),
        call.sentence(),
        reasons,
        call.options(),
        mowBy,
        call.wouldChange(),
        call.cautions(),
        call.notes(),
        today,
        call.outlook(),
        call.possibleSeasons(),
        call.waits(),
        call.limits(),
        call.units(),
        particulars);
  }

  /** The lawn with the changed call. */
  public LawnOnRound lawn() {
    return new LawnOnRound(
        lawn.slug(),
        lawn.propertyName(),
        lawn.lawnName(),
        lawn.description(),
        lawn.lastEntry(),
        call());
  }
}
