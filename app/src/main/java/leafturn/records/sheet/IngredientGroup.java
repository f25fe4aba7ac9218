package leafturn.records.sheet;

/** Groups of active ingredients that matter to what becomes of clippings. */
public enum IngredientGroup {
  /** Clopyralid, aminopyralid, picloram, aminocyclopyrachlor: they outlast composting. */
  PYRIDINE_ACID,
  OTHER
}
