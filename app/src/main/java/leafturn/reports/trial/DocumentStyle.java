package leafturn.reports.trial;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;
import leafturn.records.SourceText;
import leafturn.reports.paper.Paper;

/** What the documents of a trial share: template engine, style of pages and pictures. */
final class DocumentStyle {
  private static final String TEMPLATES = "gg.jte.generated.precompiled";
  private static final String FOLDER = "/leafturn/reports/";
  private static final TemplateEngine ENGINE =
      TemplateEngine.createPrecompiled(null, ContentType.Html, null, TEMPLATES);

  private DocumentStyle() {}

  /** A document whose template takes it under the name {@code document}. */
  static Paper filled(String title, String template, Object document) {
    StringOutput output = new StringOutput();
    ENGINE.render(template, Map.of("document", document), output);
    return Paper.of(title, resource("trial.css"), output.toString());
  }

  /** A picture with its own style, as one that stands outside the site needs it. */
  static String onPaper(String svg) {
    int open = svg.indexOf('>') + 1;
    String start =
        svg.substring(0, open).replace("<svg ", "<svg xmlns=\"http://www.w3.org/2000/svg\" ");
    return start + "<style>" + resource("trial-figure.css") + "</style>" + svg.substring(open);
  }

  private static String resource(String name) {
    return SourceText.ofResource(FOLDER + name).text();
  }
}
