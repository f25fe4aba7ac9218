package leafturn.trials.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same cases beside the R that is installed here, worked out anew; left out without R. */
class InstalledRPublishedTest {
  private static final String PACKAGES =
      "for (name in c('nlme','lmerTest','pbkrtest','emmeans','multcomp','MASS')) "
          + "library(name, character.only = TRUE)";

  @Test
  void ourResultsAreThoseOfTheInstalledPackages(@TempDir Path folder)
      throws IOException, InterruptedException {
    assumeTrue(ends(List.of("Rscript", "-e", PACKAGES)) == 0, "R with its packages is not here");
    String script = Path.of("src/test/resources/reference/variants.R").toString();
    assertThat(ends(List.of("Rscript", script, folder.toString()))).isZero();
    new VariantChecks(folder).run();
  }

  private static int ends(List<String> command) throws InterruptedException {
    try {
      Process process =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      return process.waitFor(10, TimeUnit.MINUTES) ? process.exitValue() : -1;
    } catch (IOException absent) {
      return -1;
    }
  }
}
