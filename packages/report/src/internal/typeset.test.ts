import { describe, expect, it } from 'vitest';
import { everyExtra } from '../../fixtures/invented-extras.js';
import { everyPart } from '../../fixtures/invented-results.js';
import { renderHtml } from '../render-html.js';
import { renderMarkdown } from '../render-markdown.js';
import { renderTerminal } from '../render-terminal.js';
import { markup } from './markup.js';
import { withGluedUnits, withMinus } from './typeset.js';

describe('withMinus', () => {
  it.each([
    ['-12.3', '−12.3'],
    ['from -5 to 3', 'from −5 to 3'],
    ['(-15 °C)', '(−15 °C)'],
    ['one\n-2', 'one\n−2'],
    ['\u001b[33m-1.0\u001b[0m', '\u001b[33m−1.0\u001b[0m'],
  ])('sets %j as %j', (text, expected) => {
    expect(withMinus(text)).toBe(expected);
  });

  it.each([
    '2026-11',
    'F326-M91',
    '- a bullet',
    '5 - 3',
    'ANSI/BPI-1200-S',
    'hood-2',
    '--all',
    '-x',
  ])('leaves %j, which is no negative number', (text) => {
    expect(withMinus(text)).toBe(text);
  });
});

describe('withGluedUnits', () => {
  it.each([
    ['12 Pa below', '12_Pa below'],
    ['900 cfm, 63 %', '900_cfm, 63_%'],
    ['2180 ft², 18500 ft³', '2180_ft², 18500_ft³'],
    ['40 kBtu/h', '40_kBtu/h'],
  ])('glues %j to %j', (text, expected) => {
    expect(withGluedUnits(text, '_')).toBe(expected);
  });

  it.each(['3 minutes', '4 main floors', '2 situations', '12 Paris', '5 windows'])(
    'leaves %j, which holds no unit',
    (text) => {
      expect(withGluedUnits(text, '_')).toBe(text);
    },
  );
});

describe('a template of markup', () => {
  it('typesets what is read and leaves attributes as they are', () => {
    const points = '-3 m,4';
    expect(markup`<p title="${points}">${points}</p>`.finished).toBe(
      '<p title="-3 m,4">−3\u00a0m,4</p>',
    );
  });
});

describe('every report for reading', () => {
  it('has one minus sign, in tables, lists and drawings alike', () => {
    const texts = {
      terminal: renderTerminal(everyPart, { system: 'us' }),
      markdown: renderMarkdown(everyPart, { system: 'us' }),
      page: renderHtml(everyPart, { system: 'us', extras: everyExtra }).replace(/<[^>]*>/gu, ' '),
    };
    for (const text of Object.values(texts)) {
      expect(text).toMatch(/\s\u2212\d/u);
      expect(text.match(/(?:^|[\s(>|])-\d.{0,20}/gu)).toBeNull();
    }
    expect(texts.page.match(/\d (?:Pa|cfm|°F)(?![\p{L}\d])/gu)).toBeNull();
  });
});
