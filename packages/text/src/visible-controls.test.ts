import { describe, expect, it } from 'vitest';
import { printableJson, visibleControls } from './visible-controls.js';

describe('visibleControls', () => {
  it.each([
    ['\u001b[31mred', '\\u001b[31mred'],
    ['\u009b31m', '\\u009b31m'],
    ['a\r\nb\tc\u0000', 'a\\u000d\\u000ab\\u0009c\\u0000'],
    ['\u202egnp.exe', '\\u202egnp.exe'],
    ['\u061c\u200e\u2066', '\\u061c\\u200e\\u2066'],
    ['a\u00ad\u200b\u2028\ufeffb', 'a\\u00ad\\u200b\\u2028\\ufeffb'],
    ['\u{e0041}', '\\udb40\\udc41'],
  ])('%j can be seen and steers nothing', (text, expected) => {
    expect(visibleControls(text)).toBe(expected);
  });

  it('leaves letters of every script, and what joins them, as they are', () => {
    for (const text of ['غرفة', '厨房', 'किं\u200dचित्', '👩‍👩‍👧', 'a\u0301']) {
      expect(visibleControls(text)).toBe(text);
    }
  });
});

describe('printableJson', () => {
  it('reads back as it was, and holds nothing that a terminal would obey', () => {
    const value = { 'a\u009bb': ['\u202e\u2028\n', '\u{e0041}', '👩‍👩‍👧', 1.5, null] };
    const text = printableJson(value);
    expect(JSON.parse(text)).toEqual(value);
    expect(text).not.toMatch(/[\u0080-\u009f\u2028\u202e]|\u{e0041}/u);
    expect(text).toContain('👩‍👩‍👧');
  });
});
