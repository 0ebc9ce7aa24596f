import { describe, expect, it } from 'vitest';
import { displayWidth } from './display-width.js';

describe('displayWidth', () => {
  // Widths of Unicode Standard Annex 11 (from memory), and of what terminals commonly draw.
  it.each([
    ['', 0],
    ['hood', 4],
    ['Küche', 5],
    ['Ku\u0308che', 5],
    ['厨房', 4],
    ['ｋ', 2],
    ['ｶ', 1],
    ['주방', 4],
    ['🏠', 2],
    ['👩‍👩‍👧', 2],
    ['🇨🇦', 2],
    ['❤\ufe0f', 2],
    ['m³/h', 4],
    ['… ─ °F', 6],
    ['a\u200bb', 2],
  ])('counts the columns of %j as %i', (text, columns) => {
    expect(displayWidth(text)).toBe(columns);
  });
});
