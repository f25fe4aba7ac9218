package leafturn.web;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import leafturn.records.Ids;
import leafturn.records.InputException;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookWriting;
import leafturn.records.book.ProgrammeInForce;
import leafturn.records.book.Sheet;
import leafturn.records.people.Visitor;
import leafturn.records.sheet.Address;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.NewLawn;
import leafturn.records.sheet.ProgrammeSheet;
import leafturn.records.sheet.Property;
import leafturn.web.form.Form;
import leafturn.web.sheet.NewLawnForm;
import leafturn.web.sheet.Setting;
import leafturn.web.sheet.SheetForm;
import leafturn.web.sheet.SheetForms;
import org.jspecify.annotations.Nullable;

/** Where sheets are added to a property or a lawn. */
final class NewSheetRoom implements Room {
  private static final int UNUSABLE = 422;
  private static final List<Kind<?>> OF_PROPERTY =
      List.of(Kind.LAWN, Kind.BED, Kind.HEAP, Kind.INTAKE, Kind.SOIL_TEST);
  private static final List<Kind<?>> OF_LAWN =
      List.of(Kind.PROGRAMME, Kind.VISIT, Kind.SOIL_TEST, Kind.THATCH);

  private final Desk desk;
  private final SheetDesk sheets;

  NewSheetRoom(Desk desk, SheetDesk sheets) {
    this.desk = desk;
    this.sheets = sheets;
  }

  /**
   * A sheet to be made.
   *
   * @param id its id, made with the form, so that sending it twice adds one
   * @param form how its kind is entered
   * @param place where it is to belong
   * @param setting what can be chosen
   * @param base the document it starts from: where it belongs, or for a programme the one before
   */
  private record Asked<C extends Content>(
      String id, SheetForm<C> form, SheetPlace place, Setting setting, String base) {}

  @Override
  public void open(Routes routes) {
    routes.read("/sheets/new", Right.CHANGE, this::blank);
    routes.write("/sheets/new", Right.CHANGE, Intake.SHAPE, this::add);
  }

  private void blank(Context context) {
    blank(
        context,
        String.valueOf(context.queryParam("kind")),
        context.queryParam("property"),
        context.queryParam("lawn"));
  }

  /** Shows the form of a new sheet. */
  void blank(Context context, String kind, @Nullable String property, @Nullable String lawn) {
    Asked<?> asked = asked(context, UUID.randomUUID().toString(), kind, property, lawn);
    show(context, asked, begun(asked));
  }

  private Form begun(Asked<?> asked) {
    if (asked.form().kind() != Kind.PROGRAMME || !asked.base().contains("mowing")) {
      return asked.form().begun(asked.setting());
    }
    Sheet<LawnSheet> lawn = Objects.requireNonNull(asked.place().lawn());
    LocalDate from =
        desk.book()
            .read(
                reading ->
                    ProgrammeInForce.firstFree(
                        asked.setting().today(), reading.ofLawn(Kind.PROGRAMME, lawn.id())));
    return Form.of(
            asked.form().shape(asked.setting(), asked.base()),
            asked.setting().units(),
            asked.base())
        .with("from", from.toString());
  }

  private void add(Context context) {
    String id = String.valueOf(context.formParam("id"));
    add(
        context,
        asked(
            context,
            Ids.isId(id) ? id : UUID.randomUUID().toString(),
            String.valueOf(context.formParam("kind")),
            context.formParam("property"),
            context.formParam("lawn")));
  }

  private <C extends Content> void add(Context context, Asked<C> asked) {
    Form form =
        DayCheck.told(
            SentForm.of(context, asked.form(), asked.setting(), asked.base()),
            asked.form().kind(),
            asked.setting().today(),
            asked.place().word());
    try {
      if (form.faulty()) {
        // What else is wrong is told at once with it.
        desk.book().read(reading -> ready(reading, asked, form));
        again(context, asked, form);
        return;
      }
      Sheet<?> added =
          desk.book()
              .write(
                  Guest.visitor(context).person().name(),
                  writing -> ready(writing, asked, form).apply(writing));
      Answers.goTo(context, page(added));
    } catch (InputException faults) {
      again(context, asked, form.faulted(faults));
    }
  }

  private void again(Context context, Asked<?> asked, Form form) {
    context.status(UNUSABLE);
    Form sent = Form.sent(form.shape(), form.units(), context.formParamMap());
    show(context, asked, asked.form().offeredAgain(form, sent));
  }

  /** Checks what is to be added; what it gives adds it. */
  private static <C extends Content> Function<BookWriting, Sheet<?>> ready(
      BookReading reading, Asked<C> asked, Form typed) {
    Form form = typed;
    Sheet<Property> property = asked.place().property();
    if (asked.form().kind() == Kind.LAWN && typed.value("address").isEmpty() && property != null) {
      form = typed.with("address", address(reading, asked.id(), property, typed.value("name")));
    }
    if (asked.form() instanceof NewLawnForm lawnForm) {
      return readyLawn(reading, asked, lawnForm, form);
    }
    C content = asked.form().kind().read(form.document(asked.form().noun(), asked.base()));
    SheetCheck.together(reading, asked.id(), content);
    return writing -> writing.add(asked.form().kind(), asked.id(), content);
  }

  private static Function<BookWriting, Sheet<?>> readyLawn(
      BookReading reading, Asked<?> asked, NewLawnForm lawnForm, Form form) {
    NewLawn begun =
        NewLawn.read(
            form.document(lawnForm.noun(), asked.base()),
            asked.id(),
            asked.setting().today(),
            lawnForm.programme());
    SheetCheck.together(reading, asked.id(), begun.lawn());
    return writing -> {
      Sheet<LawnSheet> added = writing.add(Kind.LAWN, asked.id(), begun.lawn());
      writing.add(Kind.PROGRAMME, begun.programmeId(), begun.programme());
      return added;
    };
  }

  private static String address(
      BookReading reading, String id, Sheet<Property> property, String name) {
    return Address.free(
        address ->
            reading.at(Kind.PROPERTY, address).isPresent()
                || reading.at(Kind.LAWN, address).filter(lawn -> !lawn.id().equals(id)).isPresent(),
        property.content().name(),
        name);
  }

  private static String page(Sheet<?> added) {
    return added.kind() == Kind.LAWN
        ? "/lawns/" + added.content().address()
        : "/sheets/" + added.id();
  }

  private Asked<?> asked(
      Context context, String id, String kind, @Nullable String property, @Nullable String lawn) {
    SheetForm<?> form = SheetForms.named(kind).orElseThrow(Refusal::notFound);
    Visitor visitor = Guest.visitor(context);
    return desk.book()
        .read(
            reading -> {
              SheetPlace place = place(reading, visitor, form.kind(), property, lawn);
              Setting setting = sheets.setting(reading, visitor, place);
              String base = base(reading, form.kind(), place);
              return form.kind() == Kind.LAWN
                  ? new Asked<>(id, lawnForm(reading, id, place), place, setting, base)
                  : new Asked<>(id, form, place, setting, base);
            });
  }

  /** The form of a lawn beside those the property has. */
  private static NewLawnForm lawnForm(BookReading reading, String id, SheetPlace place) {
    Sheet<Property> property = place.property();
    if (property == null) {
      throw Refusal.notFound();
    }
    Sheet<LawnSheet> first =
        reading.ofProperty(Kind.LAWN, property.id()).stream()
            .filter(lawn -> !lawn.id().equals(id))
            .findFirst()
            .orElse(null);
    if (first == null) {
      return new NewLawnForm(null, null);
    }
    List<Sheet<ProgrammeSheet>> programmes = reading.ofLawn(Kind.PROGRAMME, first.id());
    return new NewLawnForm(
        first.content(),
        programmes.isEmpty() ? null : programmes.get(programmes.size() - 1).content());
  }

  private static SheetPlace place(
      BookReading reading,
      Visitor visitor,
      Kind<?> kind,
      @Nullable String property,
      @Nullable String lawn) {
    if (kind == Kind.STATION) {
      return SheetPlace.BOOK;
    }
    SheetPlace place = SheetPlace.of(reading, property, lawn);
    boolean fits = place.lawn() == null ? OF_PROPERTY.contains(kind) : OF_LAWN.contains(kind);
    if (place.property() == null || !fits || !place.mayChange(visitor)) {
      throw Refusal.notFound();
    }
    return place;
  }

  private static String base(BookReading reading, Kind<?> kind, SheetPlace place) {
    ObjectNode base = JsonNodeFactory.instance.objectNode();
    Sheet<LawnSheet> lawn = place.lawn();
    Sheet<Property> property = place.property();
    if (lawn != null) {
      List<Sheet<ProgrammeSheet>> programmes = reading.ofLawn(Kind.PROGRAMME, lawn.id());
      if (kind == Kind.PROGRAMME && !programmes.isEmpty()) {
        return Kind.PROGRAMME.write(programmes.get(programmes.size() - 1).content());
      }
      base.put("lawn", lawn.id());
    } else if (property != null) {
      base.put("property", property.id());
    }
    return base.toString();
  }

  private void show(Context context, Asked<?> asked, Form form) {
    Map<String, String> hidden = new LinkedHashMap<>();
    hidden.put("kind", asked.form().kind().name());
    hidden.put("id", asked.id());
    Sheet<LawnSheet> lawn = asked.place().lawn();
    Sheet<Property> property = asked.place().property();
    if (lawn != null) {
      hidden.put("lawn", lawn.id());
    } else if (property != null) {
      hidden.put("property", property.id());
    }
    SheetFormPage page =
        new SheetFormPage(
            headline(asked.form()),
            "What you leave empty is left out; everything can be changed later.",
            asked.place(),
            form,
            "/sheets/new",
            hidden,
            "Save it",
            "Leave it",
            asked.place().page(),
            List.of());
    desk.show(context, "sheetform.jte", page.headline(), Map.of("page", page));
  }

  private static String headline(SheetForm<?> form) {
    if (form.kind() == Kind.PROGRAMME) {
      return "Another programme from a day on";
    }
    return (form.noun().matches("[aeiou].*") ? "An " : "A ") + form.noun() + " to add";
  }
}
