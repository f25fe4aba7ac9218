package leafturn.web;

import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.UploadedFile;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Looks at what a request brings before anything of it is used. */
final class Body {
  private Body() {}

  /**
   * Checks kind and size, without reading.
   *
   * @throws Refusal when it is not what the route takes
   */
  static void check(Context context, Intake intake) {
    if (context.header("Transfer-Encoding") != null) {
      throw Refusal.withoutLength();
    }
    long length = context.req().getContentLengthLong();
    if (length > intake.mostBytes()) {
      throw Refusal.tooLarge(intake.mostBytes());
    }
    String type = context.req().getContentType();
    String kind = type == null ? "" : type.replaceFirst(";.*", "").strip();
    if (length > 0 && !intake.takes(kind.toLowerCase(Locale.ROOT))) {
      throw Refusal.ofAnotherKind(intake.mediaType());
    }
  }

  /**
   * The fields of a form.
   *
   * @throws Refusal when it cannot be read
   */
  static Map<String, List<String>> form(Context context) {
    try {
      Map<String, List<String>> form = context.formParamMap();
      boolean clean =
          form.entrySet().stream()
              .allMatch(
                  field ->
                      field.getKey().indexOf('\0') < 0
                          && field.getValue().stream().allMatch(value -> value.indexOf('\0') < 0));
      if (clean) {
        return form;
      }
    } catch (HttpResponseException e) {
      throw e;
    } catch (Exception e) {
      // What the parser throws depends on where it stumbled, and not all of it is declared; all of
      // it means the same.
      throw Refusal.unreadable();
    }
    throw Refusal.unreadable();
  }

  /** The name of a file as its owner calls it, without its folders; may be empty. */
  static String fileName(UploadedFile file, int mostCharacters) {
    return shortened(
        file.filename().replaceAll("\\p{Cntrl}|.*[/\\\\]", "").strip(), mostCharacters);
  }

  /** The beginning of a text, which never ends in half a character: that could not be written. */
  static String shortened(String text, int mostCharacters) {
    if (text.length() <= mostCharacters) {
      return text;
    }
    boolean halved = Character.isHighSurrogate(text.charAt(mostCharacters - 1));
    return text.substring(0, halved ? mostCharacters - 1 : mostCharacters);
  }
}
