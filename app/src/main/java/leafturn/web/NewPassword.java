package leafturn.web;

import io.javalin.http.Context;
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

  /** The form with the faults of its password, all at once. */
  static Form checked(Context context, Form form, String name) {
    Form checked =
        Passwords.fault(typed(context), name).map(fault -> form.faulted(FRESH, fault)).orElse(form);
    return typed(context).equals(value(context, AGAIN))
        ? checked
        : checked.faulted(AGAIN, "this is not the same password; type it once more.");
  }

  private static String value(Context context, String field) {
    String value = context.formParam(field);
    return value == null ? "" : value;
  }
}
