package leafturn.records.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import leafturn.records.Choice;
import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * Something that befell a trial and touched some of its plots.
 *
 * @param trial id of the trial
 * @param day the day
 * @param what what happened
 * @param plots codes of the plots it touched; empty for all
 * @param areaM2 area it touched, m2, 0.01 to 1,000,000, or null when nobody measured
 * @param mown how it was mown, for a mowing
 * @param exclusion whether the plots are left out from then on, or null while nobody has decided
 * @param note anything to remember; may be null
 */
public record TrialEventSheet(
    String trial,
    LocalDate day,
    Happening what,
    List<String> plots,
    @Nullable Double areaM2,
    @Nullable Mown mown,
    @Nullable Exclusion exclusion,
    @Nullable String note)
    implements Content {
  public TrialEventSheet {
    plots = List.copyOf(plots);
  }

  /** What can befall a trial. */
  public enum Happening {
    MOWN("mown"),
    IRRIGATION_FAULT("irrigation fault"),
    DOG_URINE("dog urine"),
    SPREADER_OVERLAP("fertiliser spreader overlap"),
    CLIPPINGS_DRIFT("clippings drifted over"),
    OTHER("something else");

    private final String words;

    Happening(String words) {
      this.words = words;
    }

    /** What happened, for people. */
    public String words() {
      return words;
    }

    /** Whether it happens to one practice more than to another, so that its plots tell the arm. */
    boolean tellsArms() {
      return this == CLIPPINGS_DRIFT || this == OTHER;
    }
  }

  /**
   * A mowing beside the protocol; what nobody noted is null.
   *
   * @param sameDay both halves of every yard on this day
   * @param collectedFirst the collected half first
   * @param deckCleaned deck cleaned and bag emptied between the two
   * @param returnedHeightMm cut height of the half that keeps its clippings, mm, 3 to 200
   * @param collectedHeightMm cut height of the other, mm, 3 to 200
   */
  public record Mown(
      @Nullable Boolean sameDay,
      @Nullable Boolean collectedFirst,
      @Nullable Boolean deckCleaned,
      @Nullable Double returnedHeightMm,
      @Nullable Double collectedHeightMm) {
    private static Mown read(JsonObject json) {
      Mown mown =
          new Mown(
              json.flag("sameDay"),
              json.flag("collectedFirst"),
              json.flag("deckCleaned"),
              json.number("returnedHeightMm", 3, 200, "mm"),
              json.number("collectedHeightMm", 3, 200, "mm"));
      json.refuseOthers();
      return mown;
    }
  }

  /**
   * A decision on the plots that were touched.
   *
   * @param leftOut whether their readings are left out from the day on
   * @param blind whether it was made without knowing arms and results
   * @param by who decided
   * @param on the day of the decision
   * @param why the rule of the plan, or the reason
   */
  public record Exclusion(boolean leftOut, boolean blind, String by, LocalDate on, String why) {
    private static Exclusion read(JsonObject json) {
      Exclusion exclusion =
          new Exclusion(
              Boolean.TRUE.equals(json.flag("leftOut")),
              Boolean.TRUE.equals(json.flag("blind")),
              json.requiredText("by", Limits.NAME, "who decided"),
              json.requiredDate("on"),
              json.requiredText("why", Limits.SENTENCE, "the rule of the plan or the reason"));
      json.refuseOthers();
      return exclusion;
    }
  }

  /** The same event of another trial. */
  public TrialEventSheet of(String other) {
    return new TrialEventSheet(other, day, what, plots, areaM2, mown, exclusion, note);
  }

  /** The same, decided by whom and when an earlier version was where it decides the same. */
  public TrialEventSheet decidedAs(TrialEventSheet before) {
    Exclusion was = before.exclusion;
    boolean same =
        exclusion != null
            && was != null
            && exclusion.equals(
                new Exclusion(was.leftOut, was.blind, exclusion.by, exclusion.on, was.why))
            && day.equals(before.day)
            && plots.equals(before.plots);
    return same ? new TrialEventSheet(trial, day, what, plots, areaM2, mown, was, note) : this;
  }

  /** What it was, where, and what was decided: "dog urine (B1-1); left out, rule 2". */
  public String words() {
    String where = plots.isEmpty() ? "all plots" : String.join(", ", plots);
    String decided =
        exclusion == null
            ? ""
            : "; %s, %s".formatted(exclusion.leftOut() ? "left out" : "kept in", exclusion.why());
    return "%s (%s)%s".formatted(what.words(), where, decided);
  }

  /**
   * The same for raters who must not know the arms: neither the plots of what happens to one
   * practice rather than to another, nor anything of a mowing or decision that could name it.
   */
  public String blindWords() {
    boolean plotsTell = what.tellsArms() || (what == Happening.MOWN && !plots.isEmpty());
    return plotsTell
        ? "%s (plots are not shown to raters)".formatted(what.words())
        : new TrialEventSheet(trial, day, what, plots, areaM2, null, null, null).words();
  }

  /** Whether another version says more than a first decision or a note: it takes something back. */
  public boolean isTakenBackBy(TrialEventSheet later) {
    boolean sameFacts =
        day.equals(later.day)
            && what == later.what
            && plots.equals(later.plots)
            && Objects.equals(mown, later.mown);
    return !sameFacts || (exclusion != null && !exclusion.equals(later.exclusion));
  }

  static TrialEventSheet read(JsonObject json) {
    String trial = json.requiredId("trial", "the trial");
    LocalDate day = json.requiredDate("day");
    Happening what = Choice.required(json, "what", Happening.class);
    List<String> plots = json.list("plots").texts(Limits.NAME, "the code of a plot");
    Double area = json.number("areaM2", 0.01, 1e6, "m²");
    Mown mown = Part.read(json, "mown", Mown::read);
    Exclusion exclusion = Part.read(json, "exclusion", Exclusion::read);
    String note = json.text("note", Limits.NOTE);
    json.end();
    return new TrialEventSheet(trial, day, what, plots, area, mown, exclusion, note);
  }
}
