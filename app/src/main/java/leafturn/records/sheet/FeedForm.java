package leafturn.records.sheet;

/** How fertiliser comes onto the lawn. */
public enum FeedForm {
  GRANULAR,
  LIQUID
}
