package leafturn.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leafturn.quantity.Units;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.people.Person;
import leafturn.records.people.Role;
import leafturn.records.people.Shares;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.Property;
import leafturn.web.form.Field;
import leafturn.web.form.Field.Choice;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;

/** The forms about people: whom to invite, and what somebody is and sees. */
final class PeopleForms {
  private static final List<Choice> ROLES =
      Stream.of(Role.READER, Role.HELPER, Role.ADVISER, Role.OWNER)
          .map(role -> new Choice(role.word(), capital(role.word())))
          .toList();
  private static final String ROLES_MEAN =
      "A reader sees the properties shared with them; a helper logs there besides. An adviser sees"
          + " and changes every property, lawn and rule. An owner also looks after the people and"
          + " the book.";

  private final List<Sheet<Property>> properties;

  private PeopleForms(List<Sheet<Property>> properties) {
    this.properties = properties;
  }

  /** The forms for the properties a book has. */
  static PeopleForms of(BookReading reading) {
    return new PeopleForms(reading.all(Kind.PROPERTY));
  }

  /** An empty invitation. */
  Form invitation() {
    return Form.blank(invitationShape(), Units.METRIC).with("role", Role.READER.word());
  }

  /** An invitation as it was sent, with its faults. */
  Form invitation(Map<String, List<String>> sent) {
    return checked(Form.sent(invitationShape(), Units.METRIC, sent));
  }

  /** Somebody as they are. */
  Form of(BookReading reading, Person person) {
    Form form =
        Form.sent(
            personShape(),
            Units.METRIC,
            Map.of("properties", List.copyOf(Shares.of(reading, person.id()))));
    form =
        form.with("name", person.name())
            .with("role", person.role().word())
            .with("version", Integer.toString(person.version()));
    return person.withdrawn() ? form.with("withdrawn", "true") : form;
  }

  /** Somebody as they are to be, with the faults of that. */
  Form person(Map<String, List<String>> sent) {
    return checked(Form.sent(personShape(), Units.METRIC, sent));
  }

  /** The role that was chosen. */
  static Role role(Form form) {
    return Role.of(form.value("role")).orElse(Role.READER);
  }

  /** Ids of the properties that were chosen; none for those who see all anyway. */
  Set<String> chosen(Form form) {
    return properties.stream()
        .map(Sheet::id)
        .filter(id -> role(form).needsShares() && form.taken("properties", id))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Which properties somebody sees, in words. */
  String sees(Role role, Set<String> shared) {
    if (!role.needsShares()) {
      return "every property";
    }
    List<String> names =
        properties.stream()
            .filter(property -> shared.contains(property.id()))
            .map(property -> property.content().name())
            .toList();
    return names.isEmpty() ? "none yet" : String.join(", ", names);
  }

  private FormShape invitationShape() {
    return FormShape.of(
        Field.text("name", "Name")
            .hint("What they will be called here; they can change it when they come.")
            .needed(),
        Field.oneOf("role", "Role", ROLES).hint(ROLES_MEAN).needed(),
        shared());
  }

  private FormShape personShape() {
    return FormShape.of(
        Field.text("name", "Name").needed(),
        Field.oneOf("role", "Role", ROLES).hint(ROLES_MEAN).needed(),
        shared(),
        Field.flag("withdrawn", "May no longer open the book"),
        Field.hidden("version"));
  }

  private Field shared() {
    List<Choice> choices =
        properties.stream()
            .map(property -> new Choice(property.id(), property.content().name()))
            .toList();
    return Field.someOf("properties", "Properties shared with them", choices)
        .hint(
            choices.isEmpty()
                ? "The book has no property yet."
                : "For helpers and readers; owners and advisers see every property.");
  }

  private static Form checked(Form sent) {
    Form form = sent;
    if (form.value("name").isEmpty() || form.value("name").length() > Person.LONGEST_NAME) {
      form =
          form.faulted("name", "give a name of 1 to %d characters.".formatted(Person.LONGEST_NAME));
    }
    Optional<Role> role = Role.of(form.value("role"));
    return role.isEmpty() ? form.faulted("role", "choose one of the roles.") : form;
  }

  private static String capital(String word) {
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }
}
