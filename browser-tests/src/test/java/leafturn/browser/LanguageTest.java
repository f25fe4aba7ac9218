package leafturn.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is built speaks English on a machine of another language too, with points in numbers. */
class LanguageTest {
  private static final Path EXAMPLES = Path.of("..", "docs", "examples");

  @TempDir Path folder;

  @Test
  void aValidationIsTheSameInEveryLanguage() throws Exception {
    String british = RunningLeafturn.output(Locale.UK, "validate");
    assertThat(british).contains("demand met 1.00");
    assertThat(RunningLeafturn.output(Locale.GERMANY, "validate")).isEqualTo(british);
  }

  @Test
  void findingsAreTheSameInEveryLanguage() throws Exception {
    String british = findings(Locale.UK);
    assertThat(british).contains("AICc");
    assertThat(findings(Locale.GERMANY)).isEqualTo(british);
    assertThat(findings(Locale.forLanguageTag("ar-EG"))).isEqualTo(british);
  }

  private String findings(Locale language) throws Exception {
    Path report = folder.resolve(language + ".html");
    RunningLeafturn.output(
        language,
        "trial",
        "analyse",
        EXAMPLES.resolve("split-yard.csv").toString(),
        EXAMPLES.resolve("split-yard.model.json").toString(),
        "--report",
        report.toString());
    return Files.readString(report);
  }
}
