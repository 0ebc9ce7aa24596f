import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyAssessment } from '../fixtures/assessment-arbitrary.js';
import { hostile, manyZones, noAppliances, oneZone } from '../fixtures/invented-assessments.js';
import { everyPart } from '../fixtures/invented-results.js';
import { renderMarkdown } from './render-markdown.js';

const us = { system: 'us' } as const;

/** Cells of a table's line, split where Markdown splits it. */
function cellCount(line: string): number {
  return line.split(/(?<!\\)\|/u).length - 2;
}

describe('renderMarkdown', () => {
  // Golden: our own output, read by eye when it was recorded; it says nothing about any house.
  it('writes what is recorded in many-zones.md', async () => {
    await expect(renderMarkdown(manyZones, us)).toMatchFileSnapshot('../recorded/many-zones.md');
  });

  it('writes what is recorded in every-part.md', async () => {
    await expect(renderMarkdown(everyPart, us)).toMatchFileSnapshot('../recorded/every-part.md');
  });

  it('has every part of the full report', () => {
    const titles = renderMarkdown(manyZones, us).match(/^## .*$/gmu);
    expect(titles).toEqual([
      '## Answer',
      '## Cautions',
      '## Findings',
      '## Not solved: 1 situation',
      '## Zones',
      '## All situations, worst first',
      '## Delivered flow of each device',
      '## Make-up air',
      '## House and airtightness',
      '## Weather',
      '## Assumed',
      '## Not modelled',
      '## Proof of the solve',
      '## To reproduce this report',
    ]);
  });

  it('lists every situation, also those of a state in its milder weather', () => {
    const text = renderMarkdown(oneZone, us);
    expect(text).toContain('| 1 | hood high + dryer | cold | −48.3 (−46.8) |');
    expect(text).toContain('| 2 | hood high + dryer | windy | −47.1 (−45.6) |');
  });

  it('gives every finding the document, edition, section and status of its limit', () => {
    expect(renderMarkdown(oneZone, us)).toContain(
      'Source of the limit: Invented Handbook of Vents, 3rd edition, table 4 (from memory, not re-read).',
    );
  });

  it('says how things stood during the test where the assessment tells it', () => {
    const told = {
      ...oneZone,
      house: {
        ...oneZone.house,
        testPreparation: [{ item: 'hood', duringTest: 'sealed' as const }],
      },
    };
    expect(renderMarkdown(told, us)).toContain(
      '| During the test | Stood |\n| --- | --- |\n| hood | sealed |',
    );
    expect(renderMarkdown(oneZone, us)).not.toContain('During the test');
  });

  it('says that nothing was judged and nothing assumed where that is so', () => {
    const text = renderMarkdown(noAppliances, us);
    expect(text).toContain('\nNothing was judged.\n');
    expect(text).toContain('Nothing: the house file gave every value that was used.');
  });

  it('turns no name into markup, HTML or a link', () => {
    const text = renderMarkdown(hostile, us);
    expect(text).not.toMatch(/<[a-z/!]/iu);
    expect(text).not.toMatch(/(?<!\\)\[/u);
    expect(text).not.toMatch(/(?<!\\)`/u);
    expect(text).not.toMatch(/https?:\/\/|www\.|\u202e|(?!\n)\p{Cc}/u);
    expect(text).toContain('&lt;script&gt;');
  });

  it('keeps as many cells in every row as the header of its table has, for any names', () => {
    fc.assert(
      fc.property(anyAssessment, (assessment) => {
        const text = renderMarkdown(assessment, us);
        for (const block of text.split('\n\n')) {
          const lines = block.trimEnd().split('\n');
          if (!lines[0]?.startsWith('| ')) continue;
          const counts = new Set(lines.map(cellCount));
          expect(counts.size).toBe(1);
        }
        expect(text).not.toMatch(/\bNaN\b|Infinity|undefined|\[object/u);
        expect(renderMarkdown(structuredClone(assessment), us)).toBe(text);
      }),
      { seed: 2027, numRuns: 200 },
    );
  });
});
