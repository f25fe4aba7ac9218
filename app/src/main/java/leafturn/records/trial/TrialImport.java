package leafturn.records.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leafturn.quantity.DisplayNumber;
import leafturn.records.Dates;
import leafturn.records.InputException;
import leafturn.records.Sha256;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.exchange.Arrivals;
import leafturn.records.exchange.Arrivals.NewSheet;
import leafturn.records.exchange.Preview;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialPast;
import leafturn.records.sheet.TrialReadingsSheet;
import leafturn.records.sheet.TrialSheet;
import leafturn.trials.design.TrialLawn;
import leafturn.trials.observation.Reading;
import org.jspecify.annotations.Nullable;

/** Looks at a data package of a trial on its way into a book; a trial comes in once. */
public final class TrialImport {
  private final BookReading book;
  private final PackedTrial packed;
  private final String file;
  private final String fileHash;
  private final String id;
  private final List<String> notes = new ArrayList<>();

  private TrialImport(BookReading book, PackedTrial packed, String file, String fileHash) {
    this.book = book;
    this.packed = packed;
    this.file = file;
    this.fileHash = fileHash;
    this.id = Arrivals.idOf("trial " + packed.trial().plan());
  }

  /**
   * Looks at a package.
   *
   * @param grounds keeps the layout from the look to the import
   * @param file its name as the user gave it
   * @param today the last day that can have readings
   * @throws InputException with every fault of it, or when the book has its trial already
   */
  public static Preview look(
      BookReading book, TrialGrounds grounds, String file, byte[] bytes, LocalDate today) {
    PackedTrial packed = TrialPackageFile.open(file, bytes).read(grounds);
    TrialImport looking = new TrialImport(book, packed, file, Sha256.of(bytes));
    looking.refuseKnown();
    looking.refuseToCome(today);
    return looking.preview();
  }

  private void refuseKnown() {
    Optional<Sheet<TrialSheet>> known =
        book.all(Kind.TRIAL).stream()
            .filter(trial -> trial.content().plan().equals(packed.trial().plan()))
            .findFirst()
            .or(() -> book.find(Kind.TRIAL, id));
    if (known.isPresent()) {
      throw new InputException(
          "%s: the book has the trial of this plan already, %s%s; bring in its readings as readings of a trial."
              .formatted(
                  file,
                  known.get().content().name(),
                  known.get().withdrawn() ? ", which was withdrawn" : ""));
    }
  }

  /** What has not come yet was read by nobody and befell nobody. */
  private void refuseToCome(LocalDate today) {
    List<String> faults = new ArrayList<>();
    List<LocalDate> toCome =
        packed.readings().stream()
            .map(Reading::date)
            .filter(day -> day.isAfter(today))
            .sorted()
            .toList();
    if (!toCome.isEmpty()) {
      faults.add(
          "%s: %,d of its %,d readings are dated after today; the first: %s"
              .formatted(
                  file,
                  toCome.size(),
                  packed.readings().size(),
                  Dates.notYet(toCome.get(0), today)));
    }
    LocalDate ended = packed.trial().ended();
    if (ended != null && ended.isAfter(today)) {
      faults.add("%s: its end: %s".formatted(file, Dates.notYet(ended, today)));
    }
    for (TrialEventSheet event : packed.events()) {
      if (event.day().isAfter(today)) {
        faults.add(
            "%s: %s: %s".formatted(file, event.what().words(), Dates.notYet(event.day(), today)));
      }
    }
    if (!faults.isEmpty()) {
      throw new InputException(faults);
    }
  }

  private Preview preview() {
    TrialSheet given = packed.trial();
    List<String> lawns = lawns();
    TrialSheet trial = given.with(given.plan(), lawns);
    List<NewSheet<?>> sheets = new ArrayList<>();
    sheets.add(new NewSheet<>(Kind.TRIAL, id, trial, packed.summary()));
    addEvents(sheets);
    addReadings(sheets);
    if (given.frozen() == null && !packed.readings().isEmpty()) {
      notes.add("Its plan was never frozen, and its checks will say so.");
    }
    addPast(given.past());
    notes.add("What it found is worked out anew from its plan and readings.");
    return Preview.of(file, Arrivals.of(sheets), notes);
  }

  private void addPast(@Nullable TrialPast past) {
    if (past != null && past.plans().size() > 1) {
      notes.add("Its plan was changed after it was frozen; what it was before comes with it.");
    }
    if (past != null && !past.withdrawn().isEmpty()) {
      int count = past.withdrawn().stream().mapToInt(each -> each.readings().size()).sum();
      notes.add(
          "%,d %s that %s taken back %s with it, and not counted."
              .formatted(
                  count,
                  count == 1 ? "reading" : "readings",
                  count == 1 ? "was" : "were",
                  count == 1 ? "comes" : "come"));
    }
  }

  private void addEvents(List<NewSheet<?>> sheets) {
    for (int i = 0; i < packed.events().size(); i++) {
      TrialEventSheet event = packed.events().get(i).of(id);
      String words = "%s: %s".formatted(event.day(), event.what().words());
      String eventId = Arrivals.idOf("event %d of %s".formatted(i, id));
      sheets.add(new NewSheet<>(Kind.TRIAL_EVENT, eventId, event, words));
    }
  }

  private void addReadings(List<NewSheet<?>> sheets) {
    List<Reading> readings = packed.readings();
    for (int from = 0; from < readings.size(); from += TrialReadingsSheet.MOST) {
      List<Reading> part =
          readings.subList(from, Math.min(readings.size(), from + TrialReadingsSheet.MOST));
      TrialReadingsSheet sheet = new TrialReadingsSheet(id, null, file, fileHash, part, null);
      String words = DisplayNumber.counted(part.size(), "reading");
      String partId = Arrivals.idOf("readings %d of %s".formatted(from, id));
      sheets.add(new NewSheet<>(Kind.TRIAL_READINGS, partId, sheet, words));
    }
  }

  /** The lawns of this book by their names, if all are here: else only who sees all sees it. */
  private List<String> lawns() {
    Map<String, String> idOf = new HashMap<>();
    for (Sheet<LawnSheet> lawn : book.all(Kind.LAWN)) {
      idOf.put(PlanLawns.name(book, lawn), lawn.id());
    }
    List<String> names = BookPlan.of(packed.trial()).lawns().stream().map(TrialLawn::name).toList();
    if (!idOf.keySet().containsAll(names)) {
      notes.add(
          "Not all of its lawns are lawns of this book by their names, so only those who see the whole book see it; choose its lawns in the plan to share it.");
      return List.of();
    }
    return names.stream().map(name -> idOf.getOrDefault(name, "")).distinct().toList();
  }
}
