import type { Assessment } from '../assessment.js';
import { markup, type Markup } from '../internal/markup.js';
import type { NumberPrinter } from '../internal/number-printer.js';
import type { ReportExtras } from '../report-extras.js';
import type { UnitSystem } from '@evendraft/units';

/** What a section of the page is made from. */
export interface HtmlInput {
  readonly assessment: Assessment;
  readonly extras: ReportExtras;
  readonly system: UnitSystem;
  readonly printer: NumberPrinter;
}

/** A section with its place in the list of contents. */
export interface HtmlSection {
  readonly id: string;
  readonly title: string;
  readonly body: Markup;
  /** Begins a new printed page. */
  readonly alone?: boolean;
}

/**
 * A section with its heading.
 *
 * @param section - id, title and what stands in it
 * @returns HTML
 */
export function htmlSection({ id, title, body, alone = false }: HtmlSection): Markup {
  return markup`<section aria-labelledby="${id}"${alone ? markup` class="alone"` : undefined}>
<h2 id="${id}">${title}</h2>
${body}</section>
`;
}

/**
 * Sentences as a list.
 *
 * @param texts - one an item
 * @returns HTML; nothing for no texts
 */
export function htmlList(texts: readonly string[]): Markup {
  return texts.length === 0
    ? markup``
    : markup`<ul>${texts.map((text) => markup`<li>${text}</li>`)}</ul>\n`;
}

/**
 * Names with what they are.
 *
 * @param rows - pairs; one without a value is left out
 * @returns HTML; nothing for no pairs
 */
export function htmlFacts(rows: readonly (readonly [string, string | undefined])[]): Markup {
  const known = rows.filter(([, value]) => value !== undefined && value !== '');
  return known.length === 0
    ? markup``
    : markup`<dl>${known.map(([name, value]) => markup`<dt>${name}</dt><dd>${value}</dd>`)}</dl>\n`;
}
