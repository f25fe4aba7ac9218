package leafturn.reports.trial;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import leafturn.trials.findings.Findings;
import leafturn.trials.findings.TrialFacts;
import leafturn.trials.observation.Remark;

/** Findings as a page or a document shows them. */
public final class FindingsView {
  private final Findings findings;
  private final FindingsWords words;

  /**
   * @param findings to be shown
   */
  public FindingsView(Findings findings) {
    this.findings = findings;
    this.words = new FindingsWords(findings);
  }

  /** The trial's name, or what stands for it. */
  public String title() {
    return isNamed() ? findings.facts().name() : "Findings of a trial";
  }

  /** Whether the trial has a name. */
  public boolean isNamed() {
    return !findings.facts().name().isEmpty();
  }

  /** The question it asked; empty where none is known. */
  public String question() {
    return findings.facts().question();
  }

  /** The answer in one or two sentences. */
  public String headline() {
    return words.headline();
  }

  /** The answer without what stands beside it. */
  public String result() {
    return words.result();
  }

  /** What stands beside the answer: the result the other way, and what weakens it. */
  public List<String> beside() {
    return words.beside();
  }

  /** The answer alone, without its numbers. */
  public String answer() {
    String headline = words.result();
    if (words.refused()) {
      return headline;
    }
    int numbers = headline.indexOf(": ");
    return numbers < 0 ? headline : headline.substring(0, numbers) + ".";
  }

  /** The answer's numbers: the result without what {@link #answer()} says; empty for none. */
  public String numbers() {
    String result = words.result();
    String answer = answer();
    return result.equals(answer)
        ? ""
        : FindingsWords.capital(result.substring(answer.length() + 1));
  }

  /** How many units began and ended. */
  public String flow() {
    return words.flow();
  }

  /** What may be concluded and what not. */
  public List<String> conclusions() {
    return words.conclusions();
  }

  /** What a reader should know of the whole trial, and of several of its outcomes alike. */
  public List<String> warnings() {
    return Stream.concat(findings.warnings().stream(), shared().stream()).distinct().toList();
  }

  /** Warnings that several outcomes have in the same words. */
  private List<String> shared() {
    return findings.outcomes().stream()
        .flatMap(found -> found.warnings().stream())
        .filter(each -> outcomesWith(each) > 1)
        .distinct()
        .toList();
  }

  private long outcomesWith(String warning) {
    return findings.outcomes().stream().filter(own -> own.warnings().contains(warning)).count();
  }

  /** What the checks tell beside the answer and what stands beside it, the weightiest first. */
  public List<Remark> remarks() {
    Set<String> told = new HashSet<>(beside());
    if (words.refused() && findings.reach() != Findings.Reach.NOTHING_YET) {
      told.addAll(findings.standing().refusals());
    }
    return findings.standing().remarks().stream()
        .filter(each -> !told.contains(each.sentence()))
        .toList();
  }

  /** The outcomes, the primary one first. */
  public List<OutcomeView> outcomes() {
    return findings.outcomes().stream()
        .map(found -> new OutcomeView(findings, found, words, shared()))
        .toList();
  }

  /** How the trial was laid out and kept to. */
  public List<String> record() {
    TrialFacts facts = findings.facts();
    List<String> all = new ArrayList<>();
    all.add(randomisation(facts));
    List<String> told = beside();
    frozen(facts).stream().filter(each -> !told.contains(each)).forEach(all::add);
    String rule =
        findings.standing().fixedBeforehand()
            ? "Rule for leaving out, fixed beforehand: "
            : "Rule for leaving out: ";
    facts.record().exclusionRules().forEach(each -> all.add(rule + ended(each)));
    if (facts.record().deviations().isEmpty()) {
      all.add("No deviation from the plan was noted.");
    }
    facts.record().deviations().stream()
        .map(FindingsView::ended)
        .filter(each -> told.stream().noneMatch(line -> line.startsWith(each)))
        .forEach(each -> all.add("Deviation: " + each));
    return all;
  }

  private List<String> frozen(TrialFacts facts) {
    List<String> told = findings.standing().frozen();
    String hash = facts.record().hash();
    if (!told.isEmpty()) {
      return told;
    }
    String unknown =
        "No frozen plan is known; that margin, outcome and exclusions were fixed beforehand rests on the word of those who ran it.";
    return List.of(
        hash == null
            ? unknown
            : "%s The SHA-256 of the plan as given is %s.".formatted(unknown, hash));
  }

  private static String randomisation(TrialFacts facts) {
    Long seed = facts.randomisation().seed();
    String drawn = seed == null ? "the seed is not known" : "drawn from seed " + seed;
    int allowed = facts.randomisation().allowed().size();
    if (allowed > 0) {
      return "Layout: one of %,d allowed ones, %s.".formatted(allowed, drawn);
    }
    return "Layout: %s%s."
        .formatted(
            facts.randomisation().sides() == TrialFacts.Sides.BALANCED ? "sides in balance, " : "",
            drawn);
  }

  private static String ended(String sentence) {
    return sentence.endsWith(".") ? sentence : sentence + ".";
  }
}
