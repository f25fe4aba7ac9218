package leafturn.advice.season;

/** Hears how far a plan has come, and may stop it. Called from several threads. */
public interface PlanProgress {
  /** Hears nothing and never stops. */
  PlanProgress NONE =
      new PlanProgress() {
        @Override
        public void done(int programmes, int ofProgrammes) {}

        @Override
        public boolean stopped() {
          return false;
        }
      };

  /** So many programmes have been run. */
  void done(int programmes, int ofProgrammes);

  /** True when the plan is to end without an answer. */
  boolean stopped();
}
