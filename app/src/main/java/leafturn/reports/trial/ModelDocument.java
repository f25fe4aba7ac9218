package leafturn.reports.trial;

import java.util.List;
import leafturn.reports.figure.TrialFormat;
import leafturn.reports.paper.Paper;

/** An analysis whose trial is not known, as one document of its own. */
public final class ModelDocument {
  private final AskedModelView asked;
  private final List<String> method;

  /**
   * @param method how it was done, such as files and versions
   */
  public ModelDocument(AskedModelView asked, List<String> method) {
    this.asked = asked;
    this.method = List.copyOf(method);
  }

  /** The whole document. */
  public Paper paper() {
    return DocumentStyle.filled("Analysis of " + asked.response(), "modeldocument.jte", this);
  }

  /** The analysis. */
  public AskedModelView asked() {
    return asked;
  }

  /** Its picture; empty where nothing is compared. */
  public String picture() {
    String picture = asked.picture(TrialFormat.WIDE);
    return picture.isEmpty() ? "" : DocumentStyle.onPaper(picture);
  }

  /** What may be concluded and what not. */
  public List<String> limits() {
    return List.of(
        "The file of the model does not say what a unit of the trial is, where it lay, or which margin matters; so nothing is said of other yards, and equivalence is not judged.",
        "Tests of many terms or comparisons suggest what to ask next; a single one fixed beforehand settles more.",
        "To have findings with a verdict, add the section trial to the model, or give the plan.");
  }

  /** How it was done. */
  public List<String> method() {
    return method;
  }
}
