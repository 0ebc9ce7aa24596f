import type { IssueParameters } from '../issue.js';

/** What an unquoted YAML value means, or why it is refused. */
export type PlainScalar =
  | {
      readonly ok: true;
      readonly value: string | number | boolean | null;
      /** A number that a double cannot hold, as it is read. */
      readonly inexact?: string;
    }
  | {
      readonly ok: false;
      readonly code: 'text.number-form' | 'text.not-finite';
      readonly parameters: IssueParameters;
    };

const decimal = /^[-+]?(?:(?:0|[1-9]\d*)(?:\.\d*)?|\.\d+)(?:e[-+]?\d+)?$/i;
const leadingZero = /^[-+]?0\d+(?:\.\d*)?$/;
const otherBase = /^[-+]?0(?:x[\da-f_]+|o[0-7_]+|b[01_]+)$/i;
const notFinite = /^(?:[-+]?\.(?:inf|Inf|INF)|\.(?:nan|NaN|NAN))$/;

/**
 * Resolves an unquoted value by the core schema of YAML 1.2, less what its versions disagree about.
 *
 * `yes` and `no` are text. `010`, `0x10` and `.inf` are refused: readers of YAML differ in them.
 */
export function resolvePlainScalar(text: string): PlainScalar {
  if (/^(?:|~|null|Null|NULL)$/.test(text)) return { ok: true, value: null };
  if (/^(?:true|True|TRUE)$/.test(text)) return { ok: true, value: true };
  if (/^(?:false|False|FALSE)$/.test(text)) return { ok: true, value: false };
  if (decimal.test(text)) {
    const value = Number(text);
    if (!Number.isFinite(value)) {
      return { ok: false, code: 'text.not-finite', parameters: { found: shortened(text) } };
    }
    return { ok: true, value, ...inexact(text, value) };
  }
  if (leadingZero.test(text)) {
    const plain = text.replace(/^([-+]?)0+(?=\d)/, '$1');
    const parameters = { found: shortened(text), plain: shortened(plain) };
    return { ok: false, code: 'text.number-form', parameters };
  }
  if (otherBase.test(text)) {
    return { ok: false, code: 'text.number-form', parameters: { found: shortened(text) } };
  }
  if (notFinite.test(text)) {
    return { ok: false, code: 'text.not-finite', parameters: { found: text } };
  }
  return { ok: true, value: text };
}

/** An integer that is not the one that was typed; a decimal is a rounding by nature. */
export function inexact(text: string, value: number): { readonly inexact?: string } {
  if (!/^[-+]?\d{16,}$/.test(text) || BigInt(value) === BigInt(text.replace(/^\+/, ''))) return {};
  return { inexact: String(value) };
}

function shortened(text: string): string {
  return text.length <= 40 ? text : `${text.slice(0, 39)}…`;
}
