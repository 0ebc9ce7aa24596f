import { describe, expect, it } from 'vitest';
import { wrapText } from './wrap-text.js';

describe('wrapText', () => {
  it('breaks between words', () => {
    expect(wrapText('one two three', { width: 8 })).toEqual(['one two', 'three']);
  });

  it('indents the first and the further lines as asked', () => {
    expect(wrapText('one two three', { width: 8, first: '- ', rest: '  ' })).toEqual([
      '- one',
      '  two',
      '  three',
    ]);
  });

  it('cuts a word that is longer than a line', () => {
    expect(wrapText('ab cdefghij', { width: 4 })).toEqual(['ab', 'cdef', 'ghij']);
  });

  it('never cuts through a character that is several code points', () => {
    expect(wrapText('👩‍👩‍👧👩‍👩‍👧👩‍👩‍👧', { width: 5 })).toEqual(['👩‍👩‍👧👩‍👩‍👧', '👩‍👩‍👧']);
  });

  it('keeps a number on the line of its unit', () => {
    expect(wrapText('a fall of 12.3 Pa here', { width: 15 })).toEqual([
      'a fall of',
      '12.3 Pa here',
    ]);
    expect(wrapText('moves 400 cfm', { width: 10 })).toEqual(['moves', '400 cfm']);
  });

  it('tears number and unit, never the number, where both do not fit on one line', () => {
    expect(wrapText('-12345.6 Pa', { width: 9 })).toEqual(['-12345.6', 'Pa']);
  });

  it('gives one empty line for an empty text', () => {
    expect(wrapText('', { width: 10 })).toEqual(['']);
  });
});
