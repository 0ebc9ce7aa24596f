/** A value of the text with its place, the same for YAML and JSON. */
export type TextNode = MapNode | ListNode | ScalarNode;

/** Keys and values in the order of the text. */
export interface MapNode {
  readonly kind: 'map';
  /** Offset of the first character in the text. */
  readonly start: number;
  readonly entries: readonly MapEntry[];
}

/** One key with its value. */
export interface MapEntry {
  readonly key: string;
  readonly keyStart: number;
  readonly value: TextNode;
}

/** Items in the order of the text. */
export interface ListNode {
  readonly kind: 'list';
  readonly start: number;
  readonly items: readonly TextNode[];
}

/** Neither list nor map. */
export interface ScalarNode {
  readonly kind: 'scalar';
  readonly start: number;
  readonly text: string;
  readonly quoted: boolean;
  readonly value: string | number | boolean | null;
}
