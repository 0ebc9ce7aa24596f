import { describe, expect, it } from 'vitest';
import { plainText } from './plain-text.js';

describe('plainText', () => {
  it('puts every kind of white space and line end on one line', () => {
    expect(plainText('  utility\r\n\troom\u2028two ')).toBe('utility room two');
  });

  it('lets no control character through that could command a terminal', () => {
    expect(plainText('a\u001b[31mb\u0007\u009b2Jc\u0000')).toBe(
      'a\ufffd[31mb\ufffd\ufffd2Jc\ufffd',
    );
  });

  it('lets no character through that turns the direction of what follows', () => {
    expect(plainText('a\u202eb\u2066c\u200fd')).toBe('a\ufffdb\ufffdc\ufffdd');
  });

  it('replaces half of a surrogate pair and keeps whole ones', () => {
    expect(plainText('a\ud83cb🏠')).toBe('a\ufffdb🏠');
  });
});
