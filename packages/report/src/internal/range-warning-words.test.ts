import { expect, test } from 'vitest';
import { situation, studyOf } from '../../fixtures/invented-parts.js';
import { rangeWarningWords } from './range-warning-words.js';

const calm = situation({ label: 'dryer', running: { dryer: 'on' }, pressuresPa: { house: -3 } });
const fast = { item: 'dryer', part: 'duct', code: 'VelocityBeyondLaw', unit: 'm/s' } as const;

test('a part beyond its range is told once, with its worst value and how often', () => {
  const study = studyOf([
    calm,
    { ...calm, warnings: [{ ...fast, found: 110.24, most: 100 }] },
    { ...calm, warnings: [{ ...fast, found: 104, most: 100 }] },
    {
      ...calm,
      warnings: [
        { item: 'vent', code: 'RoughnessBeyondLaw', found: 0.08, most: 0.05, unit: '(-)' },
      ],
    },
  ]);
  expect(rangeWarningWords(study)).toEqual([
    'dryer, duct: the air speed reaches 110 m/s, and its law is trusted up to 100 m/s (2 situations).',
    'vent: the roughness of the wall by its diameter reaches 0.08, and its law is trusted up to 0.05 (1 situation).',
  ]);
});

test('where every law is within its range there is nothing to tell', () => {
  expect(rangeWarningWords(studyOf([calm]))).toEqual([]);
});
