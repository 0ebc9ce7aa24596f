import { expect, it } from 'vitest';

import { textDigest } from './text-digest.js';

it('is the SHA-256 of the published examples', () => {
  // NIST, Secure Hash Standard, FIPS 180-4, examples for "abc" and the empty message; from memory.
  const abc = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
  expect(textDigest('abc')).toBe(`sha256:${abc}`);
  expect(textDigest(Uint8Array.of(0x61, 0x62, 0x63))).toBe(`sha256:${abc}`);
  expect(textDigest('')).toBe(
    'sha256:e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855',
  );
});
