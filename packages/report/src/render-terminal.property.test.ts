import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyAssessment } from '../fixtures/assessment-arbitrary.js';
import { displayWidth } from './internal/display-width.js';
import { renderTerminal } from './render-terminal.js';

const seed = 2026;

describe('renderTerminal, for any assessment', () => {
  it('keeps every line within the width, prints no nonsense and is deterministic', () => {
    fc.assert(
      fc.property(
        anyAssessment,
        fc.integer({ min: 40, max: 130 }),
        fc.constantFrom('us' as const, 'si' as const),
        (assessment, width, system) => {
          const text = renderTerminal(assessment, { system, width });
          for (const line of text.split('\n')) {
            expect(displayWidth(line)).toBeLessThanOrEqual(width);
          }
          expect(text).not.toMatch(
            /\bNaN\b|Infinity|undefined|\[object|(?<![\d.])-0(?:\.0+)?(?![\d.])/u,
          );
          expect(renderTerminal(structuredClone(assessment), { system, width })).toBe(text);
        },
      ),
      { seed, numRuns: 120 },
    );
  });
});
