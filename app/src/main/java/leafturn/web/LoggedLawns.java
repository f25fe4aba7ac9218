package leafturn.web;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.LawnWithoutCall;
import leafturn.advice.call.RoundOfLawns;
import leafturn.records.book.ProgrammeInForce;
import leafturn.records.book.Sheet;
import leafturn.records.book.Today;
import leafturn.records.round.PlacedLawn;
import leafturn.records.round.Register;
import leafturn.records.sheet.AdviceSheet.Way;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.ProgrammeSheet;
import org.jspecify.annotations.Nullable;

/** Finds the lawns on which somebody may log. */
final class LoggedLawns {
  /** Whoever logs does not wait for advice; without a call the programme tells the height. */
  private static final Duration FOR_ADVICE = Duration.ofMillis(400);

  private final Desk desk;

  LoggedLawns(Desk desk) {
    this.desk = desk;
  }

  /** All of them, the most urgent first and those without a call last. */
  List<LoggedLawn> mostUrgentFirst(LogWriter who) {
    Register register = desk.rounds().register().only(who.mayLog());
    RoundOfLawns round = desk.rounds().today(all -> register, who.units(), FOR_ADVICE);
    Map<String, List<Sheet<ProgrammeSheet>>> programmes = programmes();
    List<LoggedLawn> lawns = new ArrayList<>();
    for (LawnOnRound called : round.mostUrgentFirst()) {
      register
          .lawn(called.slug())
          .ifPresent(placed -> lawns.add(lawn(who, register, placed, programmes, called)));
    }
    for (LawnWithoutCall uncalled : round.withoutCall()) {
      register
          .lawn(uncalled.slug())
          .ifPresent(placed -> lawns.add(lawn(who, register, placed, programmes, null)));
    }
    return lawns;
  }

  /** One of them by its name in addresses. */
  Optional<LoggedLawn> at(LogWriter who, String address) {
    Register register = desk.rounds().register().only(who.mayLog());
    return register.lawn(address).map(placed -> one(who, register, placed));
  }

  /** One of them by the id of its sheet. */
  Optional<LoggedLawn> withId(LogWriter who, String id) {
    Register register = desk.rounds().register().only(who.mayLog());
    return register.lawns().stream()
        .filter(placed -> placed.lawn().id().equals(id))
        .findFirst()
        .map(placed -> one(who, register, placed));
  }

  private LoggedLawn one(LogWriter who, Register register, PlacedLawn placed) {
    Register alone = new Register(register.title(), register.properties(), List.of(placed));
    RoundOfLawns round = desk.rounds().today(all -> alone, who.units(), FOR_ADVICE);
    String id = placed.lawn().id();
    Map<String, List<Sheet<ProgrammeSheet>>> programmes =
        Map.of(id, desk.book().read(reading -> reading.ofLawn(Kind.PROGRAMME, id)));
    return lawn(who, alone, placed, programmes, round.lawn(placed.address()).orElse(null));
  }

  private Map<String, List<Sheet<ProgrammeSheet>>> programmes() {
    Map<String, List<Sheet<ProgrammeSheet>>> ofLawns = new HashMap<>();
    for (Sheet<ProgrammeSheet> sheet : desk.book().read(reading -> reading.all(Kind.PROGRAMME))) {
      ofLawns.computeIfAbsent(sheet.content().lawn(), lawn -> new ArrayList<>()).add(sheet);
    }
    return ofLawns;
  }

  private LoggedLawn lawn(
      LogWriter who,
      Register register,
      PlacedLawn placed,
      Map<String, List<Sheet<ProgrammeSheet>>> programmes,
      @Nullable LawnOnRound called) {
    if (called != null) {
      desk.keeper().given(List.of(called), Way.PHONE_LOG, who.name());
    }
    String zone = placed.property().content().timeZone();
    LocalDate today = Today.of(register.title(), desk.clock()).in(ZoneId.of(zone));
    ProgrammeSheet programme =
        ProgrammeInForce.on(today, programmes.getOrDefault(placed.lawn().id(), List.of()));
    Double planned = programme == null ? null : programme.mowing().heightMm(today.getMonth());
    Double share = programme == null ? null : programme.mowing().clippings().returnedShare();
    return new LoggedLawn(
        placed.lawn().id(),
        placed.address(),
        placed.lawn().content().name(),
        placed.property().content().name(),
        zone,
        today,
        register.title().fixedDay() != null,
        called == null ? "" : called.call().sentence(),
        called == null ? planned : Double.valueOf(called.call().today().cutHeightMm()),
        share == null ? 1 : share);
  }
}
