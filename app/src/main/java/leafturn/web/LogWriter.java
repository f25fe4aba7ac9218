package leafturn.web;

import io.javalin.http.Context;
import java.util.function.Predicate;
import leafturn.quantity.Units;
import leafturn.records.people.Person;
import leafturn.records.people.Visitor;

/**
 * Who logs.
 *
 * @param id id of the person
 * @param name what they are called
 * @param units in which they write
 * @param mayLog tells by the id of a property whether they may log there
 */
record LogWriter(String id, String name, Units units, Predicate<String> mayLog) {
  static LogWriter of(Context context) {
    Visitor visitor = Guest.visitor(context);
    Person person = visitor.person();
    return new LogWriter(person.id(), person.name(), person.units(), visitor::mayLog);
  }

  LogPerson person() {
    return new LogPerson(id, name);
  }
}
