import type Fraction from 'fraction.js';

import { exact } from './exact.js';

/** A number at the start of a text, and what follows it; or why it is refused. */
export type NumberReading =
  | {
      readonly kind: 'number';
      readonly value: Fraction;
      readonly text: string;
      readonly rest: string;
    }
  | { readonly kind: 'none' }
  | { readonly kind: 'zero-denominator' }
  | { readonly kind: 'out-of-range' }
  | { readonly kind: 'comma'; readonly text: string | undefined; readonly rest: string };

const fraction = /^(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)(?![\d.])/;
const decimal = /^(\d[\d,]*(?:\.[\d,]*)?|\.\d[\d,]*)(?:e([+-]?\d+)(?![\d.]))?/i;
const grouped = /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d*)?$/;
const largest = exact('1' + '0'.repeat(30));
const smallest = largest.inverse();
const largestExponent = 60;

/** Reads a decimal (`1,200`, `.5`, `1.2e-3`), a fraction (`1/2`) or a mixed number (`3 1/2`) exactly. */
export function readNumber(text: string): NumberReading {
  const sign = /^[+-] ?/.exec(text)?.[0] ?? '';
  const unsigned = text.slice(sign.length);
  const negative = sign.startsWith('-');

  const parts = fraction.exec(unsigned);
  if (parts) {
    const [all, whole = '0', upper = '0', lower = '1'] = parts;
    if (/^0+$/.test(lower)) return { kind: 'zero-denominator' };
    const value = exact(whole).add(exact(`${upper}/${lower}`));
    return within(negative ? value.neg() : value, sign + all, unsigned.slice(all.length));
  }

  const digits = decimal.exec(unsigned);
  if (!digits) return { kind: 'none' };
  const [all, written = '', exponentText = '0'] = digits;
  // A comma at the end separates words (`8 ft, 6 in`) and is not part of the number.
  const mantissa = written.replace(/,+$/, '');
  const trailing = all === written ? written.slice(mantissa.length) : '';
  const rest = trailing + unsigned.slice(all.length);
  const ownText = all.slice(0, all.length - trailing.length);
  if (mantissa.includes(',') && !grouped.test(mantissa)) {
    const meant = decimalPoint(ownText);
    return { kind: 'comma', text: meant === undefined ? undefined : sign + meant, rest };
  }
  const exponent = Number(exponentText);
  const plain = exact(mantissa.replaceAll(',', '').replace(/^\./, '0.').replace(/\.$/, ''));
  if (Math.abs(exponent) > largestExponent) {
    if (plain.n !== 0n) return { kind: 'out-of-range' };
    return { kind: 'number', value: plain, text: sign + ownText, rest };
  }
  const value = plain.mul(exact('10').pow(exact(String(exponent))));
  return within(negative ? value.neg() : value, sign + ownText, rest);
}

function within(value: Fraction, text: string, rest: string): NumberReading {
  const magnitude = value.abs();
  if (magnitude.n !== 0n && (magnitude.gt(largest) || magnitude.lt(smallest))) {
    return { kind: 'out-of-range' };
  }
  return { kind: 'number', value, text, rest };
}

/** The same number with a decimal point, if its one comma was meant so: `1.200,5` is 1200.5. */
function decimalPoint(text: string): string | undefined {
  const [before = '', after = '', ...more] = text.split(',');
  if (more.length > 0 || after.includes('.')) return undefined;
  return `${before.replaceAll('.', '')}.${after}`;
}
