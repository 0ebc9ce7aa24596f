/** A place in a text, counted from 1 as editors count. */
export interface TextPosition {
  readonly line: number;
  readonly column: number;
}

/** Where in the data an issue is: keys and list indexes from the root. */
export type IssuePath = readonly (string | number)[];

/** What an issue's message is made from; plain JSON. */
export type IssueParameters = Readonly<Record<string, string | number | readonly string[]>>;

/**
 * Something wrong with what a person wrote, as data: a code with parameters, formatted last.
 *
 * All issues of a text are reported at once; none is ever thrown.
 */
export interface Issue {
  /** Dotted, stable, documented in the catalogue of the package that raises it, e.g. `unit.missing`. */
  readonly code: string;
  /** An error stops the work; a warning is shown and the work goes on. */
  readonly severity: 'error' | 'warning';
  /** Keys from the root of the document to the place concerned. */
  readonly path: IssuePath;
  /** What the message is made from. */
  readonly parameters: IssueParameters;
  /** The file's name as the user gave it; absent when the data did not come from a text. */
  readonly file?: string;
  /** Where the text stands in the file; absent when the data did not come from a text. */
  readonly position?: TextPosition;
}
