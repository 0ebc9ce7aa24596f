import { describe, expect, it } from 'vitest';
import { manyZones, noAppliances, oneZone } from '../fixtures/invented-assessments.js';
import { finding, situation, studyOf } from '../fixtures/invented-parts.js';
import { answerSentences } from './answer-sentences.js';

const us = { system: 'us' } as const;

describe('answerSentences', () => {
  it('says how far down the worst zone goes, in which state and weather, and what is beyond what', () => {
    expect(answerSentences(oneZone, us)).toEqual([
      'At worst, house stands 48.3 Pa below outdoors with "hood high + dryer" in weather "cold" (5 °F, still air), a fall of 46.8 Pa from its baseline.',
      'Beyond the limit: water heater in house, a fall of 46.8 Pa from its baseline against a limit of 2.0 Pa, 44.8 Pa past it.',
      'None of this is a clearance: a test on site decides.',
    ]);
  });

  it('tells the weather in the units asked for', () => {
    expect(answerSentences(oneZone, { system: 'si' })[0]).toContain('(-15 °C, still air)');
  });

  it('names the airtightness case only where there are several', () => {
    expect(answerSentences(manyZones, us)[0]).toContain('airtightness "tight end"');
    expect(answerSentences(oneZone, us)[0]).not.toContain('airtightness');
  });

  it('takes the worst zone from those that people or appliances are in, not from the attic', () => {
    const deepAttic = {
      ...manyZones,
      worstCase: studyOf([
        situation({ label: 'fan', running: {}, pressuresPa: { attic: -30, kitchen: -2 } }),
      ]),
    };
    expect(answerSentences(deepAttic, us)[0]).toMatch(/^At worst, kitchen stands 2\.0 Pa below/u);
  });

  it('orders the verdicts by urgency, what was not judged before what is within', () => {
    const openings = answerSentences(manyZones, us).map((sentence) => sentence.split(':')[0]);
    expect(openings.slice(2, 6)).toEqual([
      'Beyond the limit',
      'Near the limit',
      'Not judged',
      'Within the limit',
    ]);
  });

  it('says at once that situations are missing', () => {
    expect(answerSentences(manyZones, us)[1]).toBe(
      'Incomplete: 1 of 4 situations could not be solved and is missing here; the true worst case may be among them.',
    );
  });

  it('says that there is no answer where nothing could be solved', () => {
    const nothing = { ...oneZone, worstCase: studyOf([]), findings: [] };
    expect(answerSentences(nothing, us)).toEqual([
      'No situation could be solved, so there is no answer.',
      'Nothing was judged: there is no finding for any appliance.',
    ]);
  });

  it('says why nothing was judged in a house that burns nothing', () => {
    expect(answerSentences(noAppliances, us).at(-1)).toBe(
      'Nothing was judged: the house file describes no combustion appliance or hearth.',
    );
  });

  it('says above, never a negative size, where the lowest pressure is above outdoors', () => {
    const pushed = {
      ...noAppliances,
      worstCase: studyOf([
        situation({
          label: 'all off',
          running: {},
          pressuresPa: { house: 0.42 },
          baselinePa: 0.42,
        }),
      ]),
    };
    expect(answerSentences(pushed, us)[0]).toMatch(
      /^At worst, house stands 0\.4 Pa above outdoors .*, no change from its baseline\.$/u,
    );
  });

  it('names three appliances of a verdict, the nearest to its limit first, and counts the rest', () => {
    const many = {
      ...oneZone,
      findings: [-6, -9, -7, -8, -10].map((valuePa) =>
        finding({
          appliance: `heater ${-valuePa}`,
          zone: 'house',
          verdict: 'beyond the limit',
          valuePa,
          limitPa: -2,
        }),
      ),
    };
    const sentence = answerSentences(many, us)[1];
    expect(sentence?.match(/heater \d+|and \d more/gu)).toEqual([
      'heater 10',
      'heater 9',
      'heater 8',
      'and 2 more',
    ]);
  });
});
