import type { TextLimits } from '../text-limits.js';
import type { Problem } from './problem-list.js';

/** The text of a file, or the one reason why it is not text; what was read so far locates it. */
export interface DecodedText {
  readonly text: string;
  readonly problem?: Problem;
}

/** What both Node and browsers offer under this name; neither's types are wanted here. */
declare const TextDecoder: new (
  label: 'utf-8',
  options: { readonly ignoreBOM: boolean },
) => { decode(bytes: Uint8Array): string };

const notText = /(?![\t\n\r\u0085])\p{Cc}|[\ufffe\uffff]|\p{Surrogate}/u;

/** Checks the size, decodes UTF-8 strictly, drops a byte order mark, and refuses what is not text. */
export function decodeText(source: string | Uint8Array, limits: TextLimits): DecodedText {
  const { maxBytes } = limits;
  if (source.length > maxBytes || utf8Length(source) > maxBytes) {
    return { text: '', problem: { code: 'text.too-large', offset: 0, parameters: { maxBytes } } };
  }
  const decoded =
    typeof source === 'string'
      ? source
      : new TextDecoder('utf-8', { ignoreBOM: true }).decode(source);
  const marked = decoded.startsWith('\ufeff');
  const text = marked ? decoded.slice(1) : decoded;

  if (typeof source !== 'string') {
    const offset = firstUndecoded(source, decoded);
    if (offset >= 0) {
      return { text, problem: { code: 'text.not-utf-8', offset: offset - (marked ? 1 : 0) } };
    }
  }
  const control = notText.exec(text);
  if (control) {
    const point = control[0].codePointAt(0) ?? 0;
    const character = `U+${point.toString(16).toUpperCase().padStart(4, '0')}`;
    return {
      text,
      problem: { code: 'text.control-character', offset: control.index, parameters: { character } },
    };
  }
  return { text };
}

/** Where the decoder put its replacement character and the bytes did not hold one; -1 if nowhere. */
function firstUndecoded(bytes: Uint8Array, decoded: string): number {
  let byte = 0;
  let from = 0;
  for (let at = decoded.indexOf('\ufffd'); at >= 0; at = decoded.indexOf('\ufffd', from)) {
    byte += utf8Length(decoded.slice(from, at));
    if (bytes[byte] !== 0xef || bytes[byte + 1] !== 0xbf || bytes[byte + 2] !== 0xbd) return at;
    byte += 3;
    from = at + 1;
  }
  return -1;
}

function utf8Length(source: string | Uint8Array): number {
  if (typeof source !== 'string') return source.length;
  let length = source.length;
  for (let index = 0; index < source.length; index++) {
    const unit = source.charCodeAt(index);
    if (unit > 0x7ff && (unit < 0xd800 || unit > 0xdfff)) length += 2;
    else if (unit > 0x7f) length += 1; // Each half of a surrogate pair is two of its four bytes.
  }
  return length;
}
