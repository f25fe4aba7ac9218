package leafturn.trials.analysis;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * More models beside R's packages: unbalanced, crossed, nested, with slopes and missing cells, on
 * the log scale, with dates. Data and results by variants.R, whose head names the versions.
 */
class VariantsPublishedTest {
  private static final Path FOLDER = Path.of("src/test/resources/reference/variants");

  @Test
  void ourResultsAreTheReferences() throws IOException {
    new VariantChecks(FOLDER).run();
  }
}
