import type { IssuePath, TextPosition } from './issue.js';

/** A value that is neither a list nor a map, as it stands in the text. */
export interface ScalarText {
  /** The characters typed, without quotes and with escapes resolved: `1200` and not 1200. */
  readonly text: string;
  /** Whether it was quoted (or a YAML block), which says that it is text and not a number. */
  readonly quoted: boolean;
}

/** A text that was read: plain data, and for each part of it where it stands. */
export interface TextDocument {
  /**
   * Maps as plain objects, lists as arrays, and strings, finite numbers, booleans and null.
   *
   * Keys are always text; none can reach a prototype.
   */
  readonly value: unknown;
  /** The file's name as the user gave it. */
  readonly file: string;
  /**
   * Where a part of the data stands.
   *
   * @param path - keys and list indexes from the root
   * @param part - the value (unless said otherwise), or the key before it; a list item has no key of
   *   its own, so its value's place serves
   * @returns the place, or `undefined` if the data has no such part
   */
  locate(path: IssuePath, part?: 'key' | 'value'): TextPosition | undefined;
  /**
   * A scalar as it was typed, so that `1200` can be told from `"1200"`, and `1.50` from `1.5`.
   *
   * @param path - keys and list indexes from the root
   * @returns the characters and whether they were quoted; `undefined` for a list, a map or no value
   */
  scalarAt(path: IssuePath): ScalarText | undefined;
}
