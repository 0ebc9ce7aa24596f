import { describe, expect, it } from 'vitest';
import {
  codeScreensFromFindings,
  exceedanceFromStudy,
  sharesFromStudy,
} from './extras-from-studies.js';

// Every number here is invented by hand.
describe('sharesFromStudy', () => {
  it('gives each device its part of the whole change, what sucks most first', () => {
    const share = (device: string, sharePa: number) => ({
      device,
      speed: 'on',
      sharePa,
      standardErrorPa: 0,
      alonePa: sharePa,
      lastPa: sharePa,
    });
    const data = sharesFromStudy(
      {
        question: 'attribution',
        zone: 'kitchen',
        weather: 'cold',
        baselinePa: -2,
        pressurePa: -10,
        shares: [share('supply fan', 2), share('hood', -8), share('dryer', -2)],
        ladder: [],
        method: { kind: 'all orders', solves: 8 },
      },
      'everything on',
    );
    expect(data.shares.map(({ device, share: part }) => [device, part])).toEqual([
      ['hood on', 1],
      ['dryer on', 0.25],
      ['supply fan on', -0.25],
    ]);
  });
});

describe('exceedanceFromStudy', () => {
  it('keeps probability and interval, and says how many draws failed', () => {
    const data = exceedanceFromStudy({
      question: 'uncertainty',
      zones: [],
      targets: [
        {
          target: {
            id: 'water heater',
            zone: 'kitchen',
            quantity: 'change from baseline',
            limitPa: -2,
            side: 'not below',
          },
          probability: 0.4,
          between: [0.37, 0.43],
        },
      ],
      ranges: [],
      samples: 4000,
      failed: 3,
      seed: 1,
      exponents: [0.65],
      solves: 8000,
    });
    expect(data.basis).toBe('4000 draws of 0 uncertain values, 3 of them not solved and left out');
    expect(data.limits).toEqual([
      { appliance: 'water heater', limitPa: -2, probability: 0.4, low: 0.37, high: 0.43 },
    ]);
  });
});

describe('codeScreensFromFindings', () => {
  const screen = {
    rule: 'make-up',
    title: 'Make-up air for a strong hood',
    region: 'everywhere' as never,
    source: { document: 'Invented Code', status: 'memory' as const },
    why: 'the hood moves more than the threshold',
    satisfiedBy: [],
    give: [],
    notes: [],
  };

  it('tells the arithmetic line by line in the units asked for', () => {
    const [row] = codeScreensFromFindings(
      [
        {
          ...screen,
          applies: 'yes',
          subject: 'hood',
          verdict: 'beyond the limit',
          arithmetic: [
            {
              label: 'Rated flow',
              expression: 'given',
              value: { si: 0.1, dimension: 'volumeFlow' },
            },
          ],
        },
      ],
      'si',
    );
    expect(row).toMatchObject({ subject: 'hood', arithmetic: 'Rated flow: 100 L/s (given).' });
  });

  it('leaves out what does not apply and says why the rest was not judged', () => {
    const rows = codeScreensFromFindings(
      [
        { ...screen, applies: 'no', verdict: 'not judged', arithmetic: [] },
        {
          ...screen,
          applies: 'unknown',
          verdict: 'not judged',
          reason: 'no flow is given',
          arithmetic: [],
        },
      ],
      'us',
    );
    expect(rows.map(({ subject, arithmetic }) => [subject, arithmetic])).toEqual([
      ['the house', 'the hood moves more than the threshold. no flow is given.'],
    ]);
  });
});
