package leafturn.web;

import gg.jte.TemplateOutput;
import gg.jte.html.OwaspHtmlTemplateOutput;
import java.util.Set;
import leafturn.reports.Unbroken;
import org.jspecify.annotations.Nullable;

/** The text of a page, in which a number and its unit stay together on a line. */
final class PageOutput extends OwaspHtmlTemplateOutput {
  /** What is typed, copied or run is written as it is. */
  private static final Set<String> AS_IT_IS = Set.of("textarea", "pre", "code", "script", "style");

  private boolean words = true;

  PageOutput(TemplateOutput output) {
    super(output);
  }

  @Override
  public void setContext(@Nullable String tag, @Nullable String attribute) {
    words = attribute == null && (tag == null || !AS_IT_IS.contains(tag));
    super.setContext(tag, attribute);
  }

  @Override
  public void writeUserContent(@Nullable String text) {
    super.writeUserContent(text == null || !words ? text : Unbroken.of(text));
  }
}
