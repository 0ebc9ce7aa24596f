/** Ceilings on what is read, so that a hostile text costs neither time nor memory. */
export interface TextLimits {
  /** Size of the text [bytes of UTF-8]. */
  readonly maxBytes: number;
  /** Lists and maps within each other [levels]; a plain list of numbers is one level. */
  readonly maxDepth: number;
  /** Keys, values, lists and maps together [-]; an item of a YAML list counts twice. */
  readonly maxNodes: number;
  /** Length of one value or key [characters]. */
  readonly maxScalarLength: number;
}

/** The ceilings that hold unless the caller names others; a house file stays far below each. */
export const defaultTextLimits: TextLimits = {
  maxBytes: 1024 * 1024,
  maxDepth: 32,
  maxNodes: 50_000,
  maxScalarLength: 100_000,
};
