package leafturn.reports.trial;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;
import leafturn.quantity.Property;
import leafturn.reports.JsonReport;
import leafturn.trials.analysis.paired.PairedDifference.Verdict;
import leafturn.trials.findings.Effect;
import leafturn.trials.findings.Findings;
import leafturn.trials.findings.OutcomeFindings;
import org.junit.jupiter.api.Test;

/** What must never be said, in every document of many generated trials. */
class WordingBalanceTest {
  private static final int CASES = 8;
  private static final List<String> NEVER =
      List.of(
          "no difference",
          "no effect",
          "not different",
          "the same as",
          "insignificant",
          "ineffective",
          "proves",
          "proven",
          "nan",
          "null",
          "infinity");

  /** Per cent may stand before intervals alone. */
  private static final Pattern PERCENT = Pattern.compile("(?<!\\b9[05][ \\u00a0]?)%");

  private static final Pattern P_VALUE = Pattern.compile("\\bp [=<]|\\bp\\b.{0,20}(0\\.\\d|< 0)");
  private static final ObjectMapper JSON = new ObjectMapper();

  private static String words(Findings findings) {
    String html = new FindingsDocument(findings, null, List.of()).paper().html();
    return html.replaceAll("(?s)<style>.*?</style>", "")
        .replaceAll("aria-label=\"([^\"]*)\"", ">$1<")
        .replaceAll("<[^>]+>", " ")
        .replaceAll("\\s+", " ");
  }

  @Test
  void forbiddenWordsNeverAppear() {
    Property.forAll(
        20260401,
        Property.cases(CASES),
        random -> {
          GeneratedTrial trial = GeneratedTrial.of(random, 2 + random.nextInt(9), true);
          String words = words(trial.findings());
          for (String never : NEVER) {
            assertThat(words.toLowerCase(Locale.ROOT)).doesNotContainPattern("\\b" + never + "\\b");
          }
          if (trial.outcomes().get(0).name().equals("quality")) {
            assertThat(words).doesNotContainPattern(PERCENT);
          }
        });
  }

  @Test
  void onlyThePrimaryOutcomeHasAVerdict() {
    Property.forAll(
        7,
        Property.cases(CASES),
        random -> {
          Findings findings = GeneratedTrial.of(random, 2 + random.nextInt(9), true).findings();
          for (OutcomeFindings found : findings.outcomes()) {
            for (Effect effect : found.effects()) {
              assertThat(effect.verdict() != null).isEqualTo(found.outcome().primary());
              checkVerdict(found, effect);
            }
          }
        });
  }

  /** Equivalence needs a margin and its own tests; that a test found nothing is no verdict. */
  private static void checkVerdict(OutcomeFindings found, Effect effect) {
    Verdict verdict = effect.verdict();
    if (verdict == Verdict.EQUIVALENT || verdict == Verdict.DIFFERS_BUT_EQUIVALENT) {
      Effect.Equivalence tests = Objects.requireNonNull(effect.equivalence());
      assertThat(tests.interval().upper()).isLessThan(tests.margin());
      assertThat(tests.interval().lower()).isGreaterThan(-tests.margin());
    }
    if (verdict == Verdict.DIFFERS && found.support().ordinal() == null) {
      assertThat(effect.pAdjusted()).isLessThan(Effect.ALPHA);
    }
  }

  @Test
  void oneYardSplitOnceHasNoPValue() {
    Property.forAll(
        11,
        Property.cases(CASES),
        random -> {
          Findings findings = GeneratedTrial.of(random, 1, true).findings();
          assertThat(findings.reach()).isEqualTo(Findings.Reach.TWO_AREAS);
          assertThat(findings.outcomes()).allSatisfy(each -> assertThat(each.effects()).isEmpty());
          String words = words(findings);
          assertThat(words)
              .doesNotContainPattern(P_VALUE)
              .contains("difference between the two areas");
          assertNoP(findings);
        });
  }

  @Test
  void nothingIsTestedBeforeTheSeasonsEnd() {
    Property.forAll(
        13,
        Property.cases(CASES),
        random -> {
          Findings findings = GeneratedTrial.of(random, 2 + random.nextInt(9), false).findings();
          assertThat(words(findings)).doesNotContainPattern(P_VALUE).contains("nothing is tested");
          assertNoP(findings);
        });
  }

  private static void assertNoP(Findings findings) {
    try {
      JsonNode document =
          JSON.readTree(JsonReport.of(FindingsReport.of(findings, List.of(), "leafturn")));
      assertThat(document.findValues("p")).isEmpty();
      assertThat(document.findValues("pAdjusted")).isEmpty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** In balanced data both ways lead to one result, whatever the numbers. */
  @Test
  void theSelfCheckHolds() {
    Property.forAll(
        17,
        Property.cases(CASES),
        random -> {
          for (OutcomeFindings found :
              GeneratedTrial.of(random, 3 + random.nextInt(8), true).findings().outcomes()) {
            var check = found.support().selfCheck();
            if (check != null) {
              assertThat(check.holds()).isTrue();
            }
          }
        });
  }
}
