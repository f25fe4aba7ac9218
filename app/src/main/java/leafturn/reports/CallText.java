package leafturn.reports;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leafturn.advice.call.Call;
import leafturn.advice.call.DryHours;
import leafturn.advice.call.Option;
import leafturn.advice.call.Option.Outcome;
import leafturn.advice.call.PossibleSeasons;
import leafturn.advice.call.Reason;
import leafturn.advice.call.Spread;
import leafturn.advice.call.ThatchInAYear;
import org.jspecify.annotations.Nullable;

/** A call for a terminal: the answer, its reasons, the choices side by side, and what remains. */
public final class CallText {
  private static final double THATCH_STEP_MM = 0.01;

  private record Line(String title, Function<Option, String> words) {}

  private final Call call;
  private final List<String> lines = new ArrayList<>();

  private CallText(Call call) {
    this.call = call;
  }

  /** The lines of a call. */
  public static List<String> of(Call call) {
    CallText text = new CallText(call);
    text.answer();
    text.reasons();
    text.choices();
    text.list("Where rules of thumb disagree", call.particulars().conflicts());
    text.list("Water", call.particulars().watering());
    text.list(
        "Cuts that still lie on the turf",
        call.particulars().lying().stream()
            .map(cut -> OutcomeWords.lying(cut, new UnitWords(call.units())))
            .toList());
    text.list("What would change this answer", call.wouldChange());
    text.list("Take care", call.cautions());
    text.list("Assumed, corrected, not known", text.notes());
    return text.lines.stream().map(Paragraph::plain).toList();
  }

  private void answer() {
    wrapped("", call.sentence());
    lines.add("");
    Call.Today today = call.today();
    String wet = today.possiblyWet() ? ", leaves likely wet" : "";
    wrapped(
        "",
        "%s: stands at %s, cut to %s%s. %s."
            .formatted(
                DayWords.dayAndYear(call.on()),
                QuantityWords.whole(today.heightMm(), "mm"),
                QuantityWords.whole(today.cutHeightMm(), "mm"),
                wet,
                MowBy.explained(call)));
    wrapped(
        "",
        "Soil water %s of capacity, thatch %s; last mown %s."
            .formatted(
                QuantityWords.percent(today.soilWaterFraction()),
                QuantityWords.quantity(today.thatchMm(), "mm"),
                lastMown(today)));
    besideTheAnswer();
    DryHours hours = call.particulars().byTheHour();
    if (hours != null) {
      hours(hours);
    }
  }

  private static String lastMown(Call.Today today) {
    return today.lastMown() == null
        ? "not on record"
        : DayWords.day(today.lastMown())
            + (today.lastMownLogged() ? "" : " (reckoned from the programme, not logged)");
  }

  /** Today and tomorrow by the hour, as far as words tell them. */
  private void hours(DryHours hours) {
    for (DryHours.Day day : hours.days()) {
      wrapped("", "%s: %s.".formatted(DayWords.day(day.date()), day.words()));
    }
  }

  /** The call's notes, and what its hours mean. */
  private List<String> notes() {
    List<String> notes = new ArrayList<>(call.notes());
    DryHours hours = call.particulars().byTheHour();
    if (hours != null) {
      notes.add(hours.limits());
    }
    return notes;
  }

  /** The last safe day and where collected clippings may go, as far as there is anything to say. */
  private void besideTheAnswer() {
    if (!LastSafeDay.words(call).isEmpty()) {
      wrapped("", LastSafeDay.words(call) + ".");
    }
    if (!call.particulars().placing().sentence().isEmpty()) {
      wrapped("", call.particulars().placing().sentence());
    }
  }

  private void reasons() {
    heading("Why");
    for (Reason reason : call.reasons()) {
      String against = reason.against() ? " (speaks against returning now)" : "";
      wrapped("- ", reason.headline() + ": " + reason.meaning() + against);
      wrapped(
          "  ", "[" + reason.threshold() + "; " + reason.source() + "; " + reason.status() + "]");
    }
  }

  private void choices() {
    if (call.options().isEmpty()) {
      return;
    }
    heading("Choices");
    List<String> letters = new ArrayList<>(List.of(""));
    char letter = 'A';
    for (Option option : call.options()) {
      String remark = option.remark().isEmpty() ? "" : " (" + option.remark() + ")";
      String best = option.best() ? "  <- best choice" : "";
      wrapped(letter + "  ", option.title() + remark + best);
      letters.add(Character.toString(letter++));
    }
    lines.add("");
    TextTable table = new TextTable(letters.toArray(String[]::new));
    for (Line line : table()) {
      List<String> cells = new ArrayList<>(List.of(line.title()));
      call.options().forEach(option -> cells.add(line.words().apply(option)));
      table.row(cells.toArray(String[]::new));
    }
    lines.addAll(table.lines(Paragraph.width()));
    lines.add("");
    wrapped("", ranges(call.possibleSeasons()));
    lines.add("");
    wrapped("", lasting());
  }

  private static String ranges(PossibleSeasons seasons) {
    return "Middle of %d possible seasons of %d days, made from %s; eight of ten lie within the brackets."
        .formatted(seasons.count(), seasons.days(), seasons.madeFrom());
  }

  /** What two lines of the table rest on. */
  private String lasting() {
    String years =
        call.options().stream()
            .map(option -> option.outcome().thatchInAYear())
            .filter(Objects::nonNull)
            .findFirst()
            .map(
                thatch ->
                    " Thatch in a year: if every mowing were done so, over %d of the record's years."
                        .formatted(thatch.years()))
            .orElse("");
    return OutcomeWords.SEEN_AND_BROKEN_DOWN + years;
  }

  private List<Line> table() {
    String run = call.possibleSeasons().days() + " days";
    return List.of(
        line("Of the height", o -> QuantityWords.percent(o.heightTakenFraction()).inLine()),
        line("Bags to carry", o -> OutcomeWords.bags(o.bags()).inLine()),
        line("Loose, litres", o -> number(o.freshLitres())),
        line("Fresh, kg", o -> number(o.freshKg())),
        line("Dry matter, g/m²", o -> number(o.dryGPerM2())),
        line("Dry matter, kg", o -> number(o.dryKg())),
        line("Clumps", o -> clumps(o.clumpIndex())),
        line(
            "Not seen any more, days",
            o -> broken(o, o.inSight() == null ? null : o.inSight().days())),
        line("Half broken down, days", o -> broken(o, o.daysToHalf())),
        line("Nine tenths, days", o -> broken(o, o.daysToNineTenths())),
        line("C:N of the clippings", o -> ratio(o.kind().carbonPerNitrogen())),
        line("Soil N at first", o -> OutcomeWords.nitrogenAtFirst(o)),
        line("N in the clippings, g/m²", o -> number(o.nitrogenG())),
        line("P, g/m²", o -> number(o.phosphorusG())),
        line("K, g/m²", o -> number(o.potassiumG())),
        line("N, P, K in all, g", CallText::ofTheLawn),
        line("N of the year's feed", o -> feed(o.nitrogenShareOfYearsFeed())),
        line("P of the year's feed", o -> feed(o.phosphorusShareOfYearsFeed())),
        line("K of the year's feed", o -> feed(o.potassiumShareOfYearsFeed())),
        line("These nutrients", OutcomeWords::whereTo),
        line("Thatch in " + run + ", mm", CallText::thatch),
        line("Thatch in a year, mm", CallText::thatchInAYear),
        line("N leached in " + run + ", g/m²", o -> number(o.leachedNGPerM2())),
        line("Work, minutes", o -> whole(o.minutes())),
        line("Next mow-by day", this::next));
  }

  private static Line line(String title, Function<Outcome, String> words) {
    return new Line(title, option -> words.apply(option.outcome()));
  }

  private static String number(@Nullable Spread spread) {
    return spread == null ? OutcomeWords.NOT_KNOWN : QuantityWords.quantity(spread, "").inLine();
  }

  private static String ratio(@Nullable Spread carbonPerNitrogen) {
    return carbonPerNitrogen == null ? "nothing is cut" : whole(carbonPerNitrogen);
  }

  private static String whole(@Nullable Spread spread) {
    return spread == null ? OutcomeWords.NOT_KNOWN : QuantityWords.whole(spread, "").inLine();
  }

  private String clumps(Spread index) {
    String words = OutcomeWords.clumping(index, call.limits());
    return index.high() > 0 ? words + ", " + number(index) : words;
  }

  private static String broken(Outcome outcome, @Nullable Spread days) {
    return outcome.nutrientsStay() ? whole(days) : OutcomeWords.takenAway(outcome);
  }

  private static String ofTheLawn(Outcome outcome) {
    Option.Nutrients all = outcome.nutrientsOfTheLawn();
    return all == null
        ? OutcomeWords.NOT_KNOWN
        : Stream.of(all.nitrogenG(), all.phosphorusG(), all.potassiumG())
            .map(element -> QuantityWords.quantity(element.middle(), ""))
            .collect(Collectors.joining(", "));
  }

  private static String feed(@Nullable Spread share) {
    return share == null ? "not fed" : QuantityWords.percent(share).inLine();
  }

  private static String thatchInAYear(Outcome outcome) {
    ThatchInAYear thatch = outcome.thatchInAYear();
    return thatch == null ? OutcomeWords.NOT_KNOWN : number(thatch.mm());
  }

  private static String thatch(Outcome outcome) {
    return QuantityWords.change(outcome.thatchChangeMm(), THATCH_STEP_MM, "").inLine();
  }

  private String next(Outcome outcome) {
    Spread next = outcome.nextMowDay();
    return next == null
        ? "not in " + call.possibleSeasons().days() + " days"
        : DayWords.shortDay(DayWords.after(call.on(), next.middle()));
  }

  private void list(String title, List<String> entries) {
    if (!entries.isEmpty()) {
      heading(title);
      entries.forEach(entry -> wrapped("- ", entry));
    }
  }

  private void heading(String title) {
    lines.add("");
    lines.add(title);
  }

  private void wrapped(String lead, String text) {
    lines.addAll(Paragraph.of(lead, text));
  }
}
