package leafturn.model.lawn;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import leafturn.model.Flows;
import leafturn.model.lawn.LogEntry.Fed;
import leafturn.model.lawn.LogEntry.Measured;
import leafturn.model.lawn.LogEntry.Mown;
import leafturn.model.lawn.LogEntry.Watered;
import org.jspecify.annotations.Nullable;

/**
 * Keeps a lawn as its log says. Before the first entry the programme stands in; from then on only
 * logged mowings count. Feeding follows the log as soon as it holds any, else the programme.
 */
public final class LogKeeper implements Keeper {

  /**
   * A measured height that the model had to be set to.
   *
   * @param modelMm height the model had
   * @param measured height in the log or at a visit
   * @param nitrogenGPerM2 N that this added, or took where negative
   */
  public record Correction(
      LocalDate day, double modelMm, Measured measured, double nitrogenGPerM2) {
    /** A correction to a height of the log, mm. */
    public Correction(LocalDate day, double modelMm, double measuredMm, double nitrogenGPerM2) {
      this(day, modelMm, new Measured(day, measuredMm), nitrogenGPerM2);
    }

    /** The measured height, mm. */
    public double measuredMm() {
      return measured.heightMm();
    }
  }

  private final Lawn lawn;
  private final Map<Programme, ProgrammeKeeper> keepers = new HashMap<>();
  private final Map<LocalDate, List<LogEntry>> entries = new HashMap<>();
  private final @Nullable LocalDate firstEntry;
  private final boolean feedingLogged;
  private @Nullable Programme held;
  private final List<Correction> corrections = new ArrayList<>();

  /**
   * @param lawn its description
   * @param equations of the lawn
   * @param log entries in any order
   */
  public LogKeeper(Lawn lawn, LawnEquations equations, List<LogEntry> log) {
    this.lawn = lawn;
    lawn.earlier()
        .forEach(
            one -> keepers.put(one.programme(), new ProgrammeKeeper(one.programme(), equations)));
    keepers.put(lawn.programme(), new ProgrammeKeeper(lawn.programme(), equations));
    log.forEach(entry -> entries.computeIfAbsent(entry.day(), day -> new ArrayList<>()).add(entry));
    this.firstEntry = log.stream().map(LogEntry::day).min(LocalDate::compareTo).orElse(null);
    this.feedingLogged = log.stream().anyMatch(Fed.class::isInstance);
  }

  private ProgrammeKeeper keeperOn(LocalDate day) {
    return Objects.requireNonNull(keepers.get(lawn.programmeOn(day)));
  }

  /** Where one programme takes over from another, the deck is set to it. */
  private void takeOver(LawnRun run, LocalDate day) {
    Programme programme = lawn.programmeOn(day);
    if (held != null && held != programme) {
      ProgrammeKeeper.turnHeight(run, programme.mowing().heights().on(day));
    }
    held = programme;
  }

  @Override
  public void morning(LawnRun run) {
    LocalDate today = run.terms().date(run.day());
    takeOver(run, today);
    ProgrammeKeeper programme = keeperOn(today);
    if (!feedingLogged || beforeLog(today)) {
      programme.morning(run);
    } else {
      programme.turnHeight(run);
    }
    for (LogEntry entry : entries.getOrDefault(today, List.of())) {
      if (entry instanceof Fed fed) {
        feed(run, fed);
      } else if (entry instanceof Watered watered) {
        run.water(watered.waterMm());
      }
    }
  }

  @Override
  public void evening(LawnRun run) {
    LocalDate today = run.terms().date(run.day());
    if (beforeLog(today)) {
      keeperOn(today).evening(run);
    }
    for (LogEntry entry : entries.getOrDefault(today, List.of())) {
      if (entry instanceof Mown mown) {
        mow(run, mown);
      } else if (entry instanceof Measured measured) {
        measure(run, measured);
      }
    }
  }

  /**
   * Does what the log says of a day whose weather nobody knows yet: the grass is fed and mown as
   * the evening before left it. Water given on that day waits for its weather.
   *
   * @param run that has lived to the evening before
   * @return true when the grass was mown
   */
  public boolean beforeItsWeather(LawnRun run, LocalDate day) {
    boolean mown = false;
    for (LogEntry entry : entries.getOrDefault(day, List.of())) {
      if (entry instanceof Fed fed) {
        feed(run, fed);
      } else if (entry instanceof Mown cut) {
        mow(run, cut);
        mown = true;
      } else if (entry instanceof Measured measured) {
        measure(run, measured);
      }
    }
    return mown;
  }

  private static void feed(LawnRun run, Fed fed) {
    run.feed(fed.fastNGPerM2(), fed.slowNGPerM2(), fed.pGPerM2(), fed.kGPerM2());
  }

  private void mow(LawnRun run, Mown mown) {
    if (!Double.isNaN(mown.heightBeforeMm())) {
      measure(run, new Measured(mown.day(), mown.heightBeforeMm()));
    }
    run.cut(
        Double.isNaN(mown.heightAfterMm())
            ? lawn.programmeOn(mown.day()).mowing().heights().on(mown.day())
            : mown.heightAfterMm(),
        mown.returnedShare());
  }

  private void measure(LawnRun run, Measured measured) {
    double modelMm = run.heightMm();
    double before = run.flow(Flows.CORRECTION_N);
    run.correctHeight(measured.heightMm());
    double addedN = run.flow(Flows.CORRECTION_N) - before;
    corrections.add(new Correction(measured.day(), modelMm, measured, addedN));
  }

  private boolean beforeLog(LocalDate today) {
    return firstEntry == null || today.isBefore(firstEntry);
  }

  /** Measured heights met so far, in order. */
  public List<Correction> corrections() {
    return List.copyOf(corrections);
  }

  /** True when feeding follows the log. */
  public boolean feedingLogged() {
    return feedingLogged;
  }
}
