import type { Verdict } from '@evendraft/rules';
import { markup, type Markup } from '../internal/markup.js';

/** Told apart by edge and weight; none is green, because none is a clearance. */
const classes: Readonly<Record<Verdict, string>> = {
  'beyond the limit': 'tag beyond',
  'near the limit': 'tag near',
  'not judged': 'tag unjudged',
  'within the limit': 'tag',
};

/**
 * A verdict as a tag.
 *
 * @param text - any text
 * @returns HTML; nothing where the text is no verdict
 */
export function verdictTag(text: string): Markup | undefined {
  return Object.hasOwn(classes, text)
    ? markup`<span class="${classes[text as Verdict]}">${text}</span>`
    : undefined;
}
