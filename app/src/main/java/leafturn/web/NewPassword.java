package leafturn.web;

import io.javalin.http.Context;
import java.util.Optional;
import leafturn.records.people.Passwords;
import leafturn.web.form.Form;

/** A new password, typed twice in the fields {@code fresh} and {@code again}. */
final class NewPassword {
  private static final String FRESH = "fresh";
  private static final String AGAIN = "again";

  private NewPassword() {}

  /** What was typed, as it was typed. */
  static String typed(Context context) {
    return value(context, FRESH);
  }

  /** The form with the faults of its password. */
  static Form checked(Context context, Form form, String name) {
    Optional<String> fault = Passwords.fault(typed(context), name);
    if (fault.isPresent()) {
      return form.faulted(FRESH, fault.get());
    }
    return typed(context).equals(value(context, AGAIN))
        ? form
        : form.faulted(AGAIN, "this is not the same password; type it once more.");
  }

  private static String value(Context context, String field) {
    String value = context.formParam(field);
    return value == null ? "" : value;
  }
}
