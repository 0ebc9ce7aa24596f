import type Fraction from 'fraction.js';

import { exact } from './exact.js';
import { readNumber } from './read-number.js';

/** A length written as feet and inches; `undefined` if the text does not have that shape. */
export type FeetAndInchesReading =
  | { readonly ok: true; readonly feet: Fraction }
  | { readonly ok: false; readonly suggested: { readonly suggestion?: string } };

const shape =
  /^([+-]? ?)(\d[\d,.]*) ?(?:'|ft\.?|foot|feet)[ ,-]*(\d.*?) ?("|''|in\.?|inch|inches)?$/i;

/** Reads `8'-6"`, `8' 6 1/2"` and `8 ft 6 in` exactly; the feet are whole and the inches under 12. */
export function readFeetAndInches(text: string): FeetAndInchesReading | undefined {
  const parts = shape.exec(text);
  if (!parts) return undefined;
  const [, sign = '', feetText = '', inchesText = '', mark] = parts;
  const feet = readNumber(feetText);
  const inches = readNumber(inchesText);
  if (feet.kind !== 'number' || feet.rest !== '') return undefined;
  if (inches.kind !== 'number' || inches.rest !== '') return undefined;
  const negative = sign.startsWith('-');
  if (feet.value.d !== 1n) return { ok: false, suggested: {} };
  if (inches.value.gte(exact('12'))) {
    const total = feet.value.mul(12).add(inches.value);
    const suggestion = `${negative ? '-' : ''}${total.toFraction(true)} in`;
    return { ok: false, suggested: { suggestion } };
  }
  if (mark === undefined) {
    return { ok: false, suggested: { suggestion: `${sign.trim()}${feetText}' ${inchesText}"` } };
  }
  const total = feet.value.add(inches.value.div(12));
  return { ok: true, feet: negative ? total.neg() : total };
}
