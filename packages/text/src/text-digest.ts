import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/**
 * The digest of a text, by which a result names the file that it was computed from.
 *
 * @param source - the file as bytes or as text; the bytes of its UTF-8 count, a byte order mark included
 * @returns `sha256:` and 64 hexadecimal digits
 *
 * @example
 * textDigest('').slice(0, 15); // => 'sha256:e3b0c442'
 */
export function textDigest(source: string | Uint8Array): string {
  const bytes = typeof source === 'string' ? utf8ToBytes(source) : source;
  return `sha256:${bytesToHex(sha256(bytes))}`;
}
