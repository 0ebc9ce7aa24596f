import { parseHouse, type House } from '@evendraft/house';
import { assessmentSchema, renderHtml, renderJson, type Assessment } from '@evendraft/report';
import { limitSetById } from '@evendraft/rules';
import { beforeAll, describe, expect, it } from 'vitest';
import { assess } from './assess.js';
import { compare } from './compare.js';
import { reportExtras } from './report-extras.js';
import { size } from './size.js';

/** Invented: a hood and a dryer in a house of middling tightness, with a water heater. */
function house(given: Readonly<Record<string, unknown>> = {}): House {
  const result = parseHouse({
    evendraft: 1,
    name: 'Test Lane 9',
    floorArea: '1500 ft2',
    airtightness: '1500 cfm at 50 Pa',
    exhaust: { hood: { low: '150 cfm', high: '400 cfm' }, dryer: '60 cfm' },
    weather: [{ name: 'cold', outdoorTemperature: '-10 C' }],
    appliances: { boiler: { vent: 'natural draft', fuel: 'gas', kind: 'boiler' } },
    ...given,
  });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.house;
}

describe('assess', () => {
  let assessment: Assessment;
  const beside = limitSetById('germany-4-pa')!;
  beforeAll(async () => {
    assessment = await assess(house(), {
      beside: [beside],
      uncertainty: { samples: 200, seed: 5 },
    });
  }, 60_000);

  it('is what the schema says, to the last key', () => {
    expect(assessmentSchema.safeParse(JSON.parse(renderJson(assessment))).error).toBeUndefined();
  });

  it('judges by each set that was asked for, and in the own test of its programme', () => {
    expect(assessment.findings[0]!.verdict).toBe('beyond the limit');
    expect(assessment.programmeTest!.findings).toHaveLength(1);
    expect(assessment.beside.map(({ limitSet }) => limitSet.id)).toEqual(['germany-4-pa']);
    expect(assessment.beside[0]!.findings[0]!.limitSet).toBe('germany-4-pa');
    // Without doors the test has the same baseline and is one of the states, so that it cannot be the deeper.
    const own = assessment.programmeTest!.findings[0]!.judged!;
    expect(own.valuePa).toBeGreaterThanOrEqual(assessment.findings[0]!.judged!.valuePa - 1e-9);
  });

  it('shares the worst fall among the devices, adding up to it', () => {
    const { shares, baselinePa, pressurePa, label } = assessment.attribution!;
    expect(label).toBe('hood high + dryer');
    const sum = shares.reduce((total, { sharePa }) => total + sharePa, 0);
    expect(sum).toBeCloseTo(pressurePa - baselinePa, 6);
    expect(pressurePa - baselinePa).toBeCloseTo(assessment.findings[0]!.judged!.valuePa, 6);
  });

  it('solves cures, or says why not', async () => {
    const { cures } = assessment;
    if (cures.status !== 'solved') throw new Error('the boiler is beyond its limit');
    const before = assessment.findings[0]!.judged!.valuePa;
    const made = cures.appliances[0]!.cures.filter(({ makeUp }) => makeUp !== undefined);
    expect(made).toHaveLength(2);
    for (const { after } of made) expect(after.judged!.valuePa).toBeGreaterThan(before);
    const { asItIs, withMakeUp, situation } = cures.makeUpCurves!;
    expect(situation.weather).toBe('cold');
    expect(withMakeUp.map(({ makeUp }) => makeUp)).toEqual(made.map(({ makeUp }) => makeUp));
    for (const { curve } of withMakeUp) {
      const [at, without] = [curve.points.at(-1)!, asItIs.points.at(-1)!];
      expect(at.exhaustFlowM3PerS).toBe(without.exhaustFlowM3PerS);
      expect(at.pressurePa).toBeGreaterThan(without.pressurePa);
    }
    expect((await assess(house(), { cures: 'never' })).cures.status).toBe('not solved');
    const leaky = await assess(house({ airtightness: '60000 cfm at 50 Pa' }));
    expect(leaky.cures).toEqual({ status: 'nothing to cure' });
  }, 60_000);

  it('asks how far the house may go, what its air does, and what its dryer does', () => {
    const { air } = assessment;
    if (air?.status !== 'solved') throw new Error('the house is quick to solve');
    const [boiler] = air.howFar.airtightness;
    // The boiler is beyond its limit, so that the house would have to be leakier than it was tested.
    if (boiler?.answer.status !== 'found') throw new Error('some airtightness keeps it');
    expect(boiler.answer.flowM3PerS).toBeGreaterThan(
      house().airtightness.cases[0]!.volumeFlowM3PerS,
    );
    expect(air.howFar.together!.smallestThatBreak).toContainEqual(['hood']);
    expect(air.guidance.map(({ rule }) => rule)).toContain('soil-gas-suction');
    expect(air.dryers.map(({ dryer }) => dryer)).toEqual(['dryer']);
    expect(air.failures).toEqual([]);
  });

  it('lays failures beside the house as it is, and takes facts of doors and hoods', async () => {
    const fed = house({ makeUp: { inlet: { opensWith: 'hood', diameter: '8 in' } } });
    const { air } = await assess(fed, {
      cures: 'never',
      facts: { hoods: { hood: { widthM: 0.76, place: 'at a wall' } } },
    });
    if (air?.status !== 'solved') throw new Error('the house is quick to solve');
    const [asItIs, stuck] = air.failures;
    expect(asItIs!.failure).toBe('as it is');
    expect(stuck!.failure).toBe('damper stuck shut');
    expect(stuck!.lowest.pressurePa).toBeLessThan(asItIs!.lowest.pressurePa);
    const byWidth = air.guidance.find(({ rule }) => rule === 'hood-flow-by-width');
    expect(byWidth!.verdict).not.toBe('not judged');
    expect((await assess(fed, { cures: 'never', air: 'never' })).air).toBeUndefined();
  }, 60_000);

  it('screens only the regions that were asked for', async () => {
    const german = await assess(house(), { cures: 'never', regions: ['Germany'] });
    expect(new Set(german.screens.map(({ region }) => region))).toEqual(
      new Set(['everywhere', 'Germany']),
    );
    expect(german.screens.length).toBeLessThan(assessment.screens.length);
  });

  it('gives the same draws for the same seed', async () => {
    const again = await assess(house(), { cures: 'never', uncertainty: { samples: 200, seed: 5 } });
    expect(again.uncertainty).toEqual(assessment.uncertainty);
  }, 60_000);

  it('gives the page every drawing that it has data for', async () => {
    const extras = await reportExtras(house(), assessment, { system: 'us' });
    expect(Object.keys(extras).sort()).toEqual([
      'codeScreens',
      'exceedance',
      'exhaustCurve',
      'fans',
      'leaks',
      'makeUpOptions',
      'notes',
      'section',
      'shares',
    ]);
    // What was measured at 50 Pa, 1 cfm being 0.3048³/60 m³/s, is all there, leak by leak.
    const testedM3PerS = extras.leaks!.reduce((sum, leak) => sum + leak.at50PaM3PerS, 0);
    expect(testedM3PerS / (1500 * (0.3048 ** 3 / 60))).toBeCloseTo(1, 9);
    const html = renderHtml(assessment, { system: 'us', extras });
    for (const id of ['section', 'shares', 'exceedance'])
      expect(html).toContain(`id="${id}-wide-title"`);
  }, 60_000);
});

describe('size', () => {
  it('keeps a pressure that was given, and says so of it alone', async () => {
    const target = {
      id: 'house',
      zone: house().zones[0]!.id,
      quantity: 'zone minus outdoors',
      limitPa: -5,
      side: 'not below',
    } as const;
    const result = await size(house(), { remedy: { kind: 'make-up duct' }, targets: [target] });
    if (result.status !== 'answered') throw new Error(result.why);
    expect(result.sizing.limitSet).toBeUndefined();
    expect(result.sizing.result.status).toBe('sized');
    expect(result.sizing.result.margins[0]!.valuePa).toBeGreaterThanOrEqual(-5);
  }, 60_000);

  it('says what is missing', async () => {
    const none = await size(house(), { remedy: { kind: 'speed cap', device: 'fan\u001b[2J' } });
    expect(none).toEqual({
      status: 'not possible',
      why: 'the house has no exhaust device "fan\\u001b[2J"; it has "hood", "dryer"',
    });
    const zone = await size(house(), { remedy: { kind: 'make-up duct', zone: 'attic' } });
    expect(zone.status).toBe('not possible');
    const electric = house({ appliances: { heater: { vent: 'electric', kind: 'water heater' } } });
    const noLimit = await size(electric, { remedy: { kind: 'make-up duct' } });
    expect(noLimit.status === 'not possible' && noLimit.why).toContain('has no limit');
  });
});

describe('compare', () => {
  it('leaves out what the house cannot have, and says why', async () => {
    const result = await compare(house(), {
      remedies: [{ kind: 'speed cap' }, { kind: 'transfer opening' }],
    });
    expect(result.comparison.rows.map(({ kind }) => kind)).toEqual(['speed cap']);
    expect(result.leftOut).toEqual(['transfer opening: a transfer opening needs two zones']);
  }, 60_000);
});
