package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import gg.jte.output.StringOutput;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class PageOutputTest {
  private static String written(@Nullable String tag, @Nullable String attribute, String text) {
    StringOutput output = new StringOutput();
    PageOutput page = new PageOutput(output);
    page.setContext(tag, attribute);
    page.writeUserContent(text);
    return output.toString();
  }

  @Test
  void wordsOfAPageKeepNumberAndUnitTogether() {
    assertThat(written("p", null, "39 % & 2 mm")).isEqualTo("39\u00a0% &amp; 2\u00a0mm");
    assertThat(written(null, null, "39 %")).isEqualTo("39\u00a0%");
  }

  @Test
  void whatIsTypedOrCopiedIsAsItIs() {
    assertThat(written("textarea", null, "39 %")).isEqualTo("39 %");
    assertThat(written("code", null, "39 %")).isEqualTo("39 %");
    assertThat(written("input", "value", "39 %")).isEqualTo("39 %");
  }
}
