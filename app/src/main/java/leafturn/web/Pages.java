package leafturn.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.HashMap;
import java.util.Map;

/** Fills the templates. */
final class Pages {
  private static final String TEMPLATES = "gg.jte.generated.precompiled";

  private final TemplateEngine engine =
      TemplateEngine.createPrecompiled(null, ContentType.Html, null, TEMPLATES);

  /**
   * A page.
   *
   * @param template its template's file name
   * @param content the template's parameters beside the frame
   */
  String filled(String template, Frame frame, Map<String, ?> content) {
    Map<String, Object> parameters = new HashMap<>(content);
    parameters.put("frame", frame);
    return part(template, parameters);
  }

  /** A part of a page, which needs no frame. */
  String part(String template, Map<String, ?> content) {
    StringOutput output = new StringOutput();
    engine.render(template, new HashMap<String, Object>(content), new PageOutput(output));
    return output.toString();
  }
}
