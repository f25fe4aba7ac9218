package leafturn.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leafturn.advice.evidence.Shortcoming;
import org.junit.jupiter.api.Test;

/** The table of published studies: the page in docs is what the command prints. */
class ValidateCommandTest {
  private static final Path PAGE = Path.of("..", "docs", "validation.md");
  private static final String FENCE = "```";

  @Test
  void thePageIsWhatTheCommandPrints() throws IOException {
    assertThat(lastBlock(Files.readAllLines(PAGE, StandardCharsets.UTF_8)))
        .containsExactlyElementsOf(run("validate").lines().toList());
  }

  @Test
  void everyFailureIsExplainedAndNothingElse() throws IOException {
    JsonNode report = new ObjectMapper().readTree(run("validate", "--json"));
    List<String> failed = new ArrayList<>();
    for (JsonNode row : report.get("rows")) {
      if (row.get("verdict").asText().equals("FAIL")) {
        failed.add(row.get("id").asText());
      }
    }
    List<String> explained = new ArrayList<>();
    for (JsonNode miss : report.get("misses")) {
      miss.get("ids").forEach(id -> explained.add(id.asText()));
    }

    assertThat(failed).isNotEmpty().hasSize(report.get("fail").asInt());
    assertThat(explained).containsExactlyInAnyOrderElementsOf(failed);
  }

  @Test
  void whatTheModelIsSaidToGetWrongIsWhatItMisses() throws IOException {
    List<String> missed = new ArrayList<>();
    for (JsonNode miss : new ObjectMapper().readTree(run("validate", "--json")).get("misses")) {
      missed.add(miss.get("name").asText());
    }
    assertThat(Shortcoming.all()).extracting(Shortcoming::name).containsExactlyElementsOf(missed);
  }

  private static String run(String... arguments) {
    Ran ran = Ran.of(arguments);
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    return ran.out();
  }

  private static List<String> lastBlock(List<String> page) {
    int end = page.lastIndexOf(FENCE);
    int start = page.subList(0, end).lastIndexOf(FENCE + "text");
    return page.subList(start + 1, end);
  }
}
