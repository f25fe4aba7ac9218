package leafturn.records.sheet;

/** What a product is applied for. */
public enum ProductKind {
  HERBICIDE,
  FUNGICIDE,
  INSECTICIDE,
  GROWTH_REGULATOR,
  OTHER
}
