import { describe, expect, it } from 'vitest';
import { firstDifference } from '../../tools/first-difference.mjs';

describe('the first difference of two texts', () => {
  it('is nothing when they are equal', () => {
    expect(firstDifference('a\nb', 'a\nb')).toBeUndefined();
  });

  it('is the first line that differs', () => {
    expect(firstDifference('a\nb\nc', 'a\nB\nC')).toBe('line 2\n  recorded: b\n  now: B');
  });

  it('is the line that one of them does not have', () => {
    expect(firstDifference('a', 'a\nb')).toBe('line 2\n  recorded: (nothing)\n  now: b');
    expect(firstDifference('a\n', 'a')).toBe('line 2\n  recorded: \n  now: (nothing)');
  });
});
