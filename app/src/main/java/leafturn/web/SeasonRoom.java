package leafturn.web;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leafturn.advice.season.PlanRequest;
import leafturn.advice.season.PlannedProgramme;
import leafturn.advice.season.SeasonPlan;
import leafturn.quantity.Units;
import leafturn.records.Dates;
import leafturn.records.InputException;
import leafturn.records.ProgrammesFile.Programmes;
import leafturn.records.book.ProgrammeInForce;
import leafturn.records.book.Sheet;
import leafturn.records.people.Visitor;
import leafturn.records.round.BookRules;
import leafturn.records.round.LawnToPlan;
import leafturn.records.round.PlacedLawn;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.ProgrammeSheet;
import leafturn.reports.UnitWords;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;
import org.jspecify.annotations.Nullable;

/** The season plan of a lawn: asked for, followed, weighed and adopted. */
final class SeasonRoom implements Room {
  private static final int UNUSABLE = 422;
  private static final int BUSY = 503;
  private static final int POSSIBLE_SEASONS = 100;
  private static final long SEED = 1;
  private static final String PAGE = "/lawns/{address}/season";

  private final Desk desk;
  private final PlanDesk plans;

  SeasonRoom(Desk desk, PlanDesk plans) {
    this.desk = desk;
    this.plans = plans;
  }

  @Override
  public void open(Routes routes) {
    routes.read(PAGE, Right.READ, this::show);
    routes.read(PAGE + "/progress", Right.READ, this::progress);
    routes.write(PAGE, Right.READ, Intake.FORM, this::begin);
    routes.write(PAGE + "/stop", Right.READ, Intake.FORM, this::stop);
    routes.write(PAGE + "/adopt", Right.CHANGE, Intake.FORM, this::adopt);
  }

  private void show(Context context) {
    PlacedLawn placed = placed(context);
    PlanJob job = plans.of(placed.lawn().id()).orElse(null);
    if (job != null && job.made() != null && PlanWeights.of(context.queryParamMap()).none()) {
      context.status(UNUSABLE);
    }
    show(context, placed, asked(context, placed), "");
  }

  /** What was asked for last, for whoever reads in the same units; else the blank form. */
  private Form asked(Context context, PlacedLawn placed) {
    Units units = Guest.visitor(context).person().units();
    return plans
        .of(placed.lawn().id())
        .map(PlanJob::form)
        .filter(form -> form.units() == units)
        .orElseGet(() -> SeasonForm.blank(shape(units, placed), units));
  }

  private FormShape shape(Units units, PlacedLawn placed) {
    boolean southern = placed.property().content().latitudeDeg() < 0;
    return SeasonForm.shape(units, desk.book().read(BookRules::of).third(), southern);
  }

  private void show(Context context, PlacedLawn placed, Form form, String fault) {
    LocalDate today = desk.rounds().dayOf(placed);
    String lawn = placed.lawn().id();
    LocalDate from =
        desk.book()
            .read(
                reading -> ProgrammeInForce.firstFree(today, reading.ofLawn(Kind.PROGRAMME, lawn)));
    show(context, placed, form, fault, new Unadopted("", from.toString(), ""));
  }

  private void show(
      Context context, PlacedLawn placed, Form form, String fault, Unadopted unadopted) {
    PlanJob job = plans.of(placed.lawn().id()).orElse(null);
    Map<String, Object> content = new HashMap<>();
    content.put("page", page(context, placed, job));
    content.put("form", form);
    content.put("fault", fault);
    content.put("unadopted", unadopted);
    String name = placed.lawn().content().name();
    desk.show(
        context,
        "seasonplan.jte",
        "Season plan: " + name + ", " + placed.property().content().name(),
        content);
  }

  private SeasonPage page(Context context, PlacedLawn placed, @Nullable PlanJob job) {
    Visitor visitor = Guest.visitor(context);
    return new SeasonPage(
        placed,
        job,
        PlanWeights.of(context.queryParamMap()),
        new UnitWords(visitor.person().units()),
        visitor.mayChange(placed.property().id()),
        sinceThen(placed, job == null ? null : job.made()),
        missing(placed));
  }

  private String missing(PlacedLawn placed) {
    LocalDate today = desk.rounds().dayOf(placed);
    return desk.book().read(reading -> LawnToPlan.missing(reading, placed, today));
  }

  private String sinceThen(PlacedLawn placed, PlanJob.@Nullable Made made) {
    if (made == null) {
      return "";
    }
    LocalDate today = desk.rounds().dayOf(placed);
    return desk.book().read(reading -> made.subject().since(reading, placed, today));
  }

  private void progress(Context context) {
    PlacedLawn placed = placed(context);
    PlanJob job = plans.of(placed.lawn().id()).orElseThrow(Refusal::notFound);
    if (job.state().ended()) {
      context.header("HX-Refresh", "true");
    }
    desk.showPart(context, "planprogress.jte", Map.of("done", job.done(), "all", job.all()));
  }

  private void begin(Context context) {
    PlacedLawn placed = placed(context);
    Units units = Guest.visitor(context).person().units();
    Form form = Form.sent(shape(units, placed), units, context.formParamMap()).closedUp();
    try {
      LocalDate today = desk.rounds().dayOf(placed);
      LawnToPlan subject = desk.book().read(reading -> LawnToPlan.of(reading, placed, today));
      PlanJob job = new PlanJob(subject, request(subject, form), form, today);
      if (plans.ask(placed.lawn().id(), job)) {
        Answers.goTo(context, address(placed));
      } else {
        context.status(BUSY);
        show(context, placed, form, "Many plans are being made just now; try again in a minute.");
      }
    } catch (InputException faults) {
      context.status(UNUSABLE);
      show(context, placed, form.faulted(faults), "");
    }
  }

  private static PlanRequest request(LawnToPlan subject, Form form) {
    Programmes asked = SeasonForm.read(form, subject.lawn().programme());
    return new PlanRequest(
        subject.lawn(),
        subject.climate(),
        asked.programmes(),
        asked.search(),
        new PlanRequest.Draws(POSSIBLE_SEASONS, SEED),
        subject.rules());
  }

  private void stop(Context context) {
    PlacedLawn placed = placed(context);
    plans.of(placed.lawn().id()).ifPresent(PlanJob::stop);
    Answers.goTo(context, address(placed));
  }

  private void adopt(Context context) {
    PlacedLawn placed = placed(context);
    if (!Guest.visitor(context).mayChange(placed.property().id())) {
      throw Refusal.notAllowed();
    }
    PlanJob.Made made = plans.of(placed.lawn().id()).map(PlanJob::made).orElse(null);
    if (made == null) {
      throw Refusal.notFound();
    }
    String from = String.valueOf(context.formParam("from"));
    LocalDate day = Dates.parse(from);
    String number = String.valueOf(context.formParam("number"));
    PlannedProgramme planned = planned(made.plan(), number);
    String fault =
        day == null
            ? "The first day of the programme: " + Dates.fault(from)
            : dayFault(placed, day);
    if (day == null || !fault.isEmpty()) {
      context.status(UNUSABLE);
      show(context, placed, asked(context, placed), "", new Unadopted(number, from, fault));
      return;
    }
    Sheet<ProgrammeSheet> adopted =
        desk.book()
            .write(
                Guest.visitor(context).person().name(),
                writing -> LawnToPlan.adopt(writing, placed.lawn().id(), day, planned));
    Answers.goTo(context, "/sheets/" + adopted.id());
  }

  private String dayFault(PlacedLawn placed, LocalDate day) {
    LocalDate today = desk.rounds().dayOf(placed);
    return desk.book().read(reading -> LawnToPlan.fault(reading, placed, day, today));
  }

  private static PlannedProgramme planned(SeasonPlan plan, String number) {
    List<SeasonPlan.Result> programmes = plan.programmes();
    if (!number.matches("\\d{1,4}") || Integer.parseInt(number) >= programmes.size()) {
      throw Refusal.unreadable();
    }
    return programmes.get(Integer.parseInt(number)).planned();
  }

  private static String address(PlacedLawn placed) {
    return "/lawns/" + placed.address() + "/season";
  }

  private PlacedLawn placed(Context context) {
    return desk.rounds()
        .register()
        .only(Guest.visitor(context)::mayRead)
        .lawn(context.pathParam("address"))
        .orElseThrow(Refusal::notFound);
  }
}
