import { describe, expect, it } from 'vitest';
import { oneZone } from '../../fixtures/invented-assessments.js';
import { proofSentences, roundedUp } from './proof-sentences.js';

describe('roundedUp', () => {
  it.each([
    [0, '0'],
    [2.4e-13, '3e-13'],
    [2e-13, '2e-13'],
    [9.2e-7, '1e-6'],
    [0.031, '0.04'],
    [1, '1'],
    [950, '1e+3'],
  ])('prints %d with one digit and never less than it is: %s', (value, text) => {
    expect(roundedUp(value)).toBe(text);
    expect(Number(text)).toBeGreaterThanOrEqual(value);
  });
});

describe('proofSentences', () => {
  it('tells residual, enclosure, uniqueness and iterations', () => {
    expect(proofSentences(oneZone.worstCase)).toEqual([
      '7 balances solved: 4 states, 2 weathers, 1 airtightness case, and their baselines.',
      'Air flowing into a zone less air flowing out of it is at most 3e-13 of the flow through that zone.',
      'Every exact answer of these flow laws lies within 4e-9 Pa of the pressures given.',
      'Each balance is the only one possible.',
      'The slowest solve took 9 iterations.',
    ]);
  });

  it('does not claim what was not shown', () => {
    const first = oneZone.worstCase.situations[0];
    if (first === undefined) throw new Error('the fixture has a situation');
    const sentences = proofSentences({
      ...oneZone.worstCase,
      situations: [{ ...first, proof: { ...first.proof, unique: false } }],
      proof: { ...oneZone.worstCase.proof, largestEnclosureRadiusPa: null },
    });
    expect(sentences[2]).toBe(
      'How far a pressure may be from the exact answer could not be shown.',
    );
    expect(sentences[3]).toBe('1 balance may be one of several that are possible.');
  });

  it('counts the solves whose enclosure is missing', () => {
    const { worstCase } = oneZone;
    const sentences = proofSentences({
      ...worstCase,
      proof: { ...worstCase.proof, notEnclosed: 2 },
    });
    expect(sentences[2]).toContain('except in 2 solves where this could not be shown');
  });
});
