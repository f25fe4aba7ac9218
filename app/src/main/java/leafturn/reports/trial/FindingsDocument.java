package leafturn.reports.trial;

import java.util.ArrayList;
import java.util.List;
import leafturn.reports.figure.TrialFormat;
import leafturn.reports.paper.Paper;
import leafturn.trials.findings.Findings;
import org.jspecify.annotations.Nullable;

/** The findings of a trial as one document of their own: HTML that also makes the PDF. */
public final class FindingsDocument {
  private final FindingsView view;
  private final @Nullable AskedModelView asked;
  private final List<String> method;

  /**
   * @param asked the analysis as a model file asked for it; null where there is none
   * @param method further lines on how it was done, such as files and versions
   */
  public FindingsDocument(Findings findings, @Nullable AskedModelView asked, List<String> method) {
    this.view = new FindingsView(findings);
    boolean twoAreas = findings.reach() == Findings.Reach.TWO_AREAS;
    this.asked = asked != null && twoAreas ? asked.withoutTests() : asked;
    this.method = List.copyOf(method);
  }

  /** The whole document. */
  public Paper paper() {
    return DocumentStyle.filled(view.title(), "trialdocument.jte", this);
  }

  /** What is shown. */
  public FindingsView view() {
    return view;
  }

  /** The shape of its pictures. */
  public TrialFormat format() {
    return TrialFormat.WIDE;
  }

  /** A picture with its own style, as one that stands outside the site needs it. */
  public String onPaper(String svg) {
    return DocumentStyle.onPaper(svg);
  }

  /** How it was done. */
  public List<String> method() {
    List<String> all = new ArrayList<>(method);
    all.add(
        "Each plot's season becomes one number; their paired differences give interval and test, two one-sided tests judge equivalence, and an exact test goes through the layouts that might have been drawn. Beside it stands a linear mixed model of all dates by restricted maximum likelihood with Kenward and Roger's degrees of freedom. Method and sources: docs/trials.md of Leafturn.");
    return all;
  }

  /** The model as it was asked for; null where there is none. */
  public @Nullable AskedModelView asked() {
    return asked;
  }
}
