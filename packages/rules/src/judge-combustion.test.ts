import { compileHouse, parseHouse } from '@evendraft/house';
import { combustionStudy, worstCaseStudy } from '@evendraft/studies';
import { beforeAll, describe, expect, it } from 'vitest';
import { judgeCombustion, type CombustionFinding } from './judge-combustion.js';
import { limitSetById } from './limit-set-by-id.js';

/** Findings on an invented house with a natural-draft water heater and a hood. */
async function findingsOf(hood: string, set: string): Promise<readonly CombustionFinding[]> {
  const parsed = parseHouse({
    evendraft: 1,
    name: 'Larch Bend 3',
    floorArea: '180 m2',
    volume: '440 m3',
    airtightness: { result: '2 ACH50', direction: 'depressurized' },
    exhaust: { hood: { kind: 'hood', flow: hood } },
    weather: [{ name: 'cold', outdoorTemperature: '0 C', wind: 'calm' }],
    appliances: {
      'water heater': {
        vent: 'natural draft',
        fuel: 'gas',
        input: '12 kW',
        flue: { height: '7 m', diameter: '100 mm', collarHeight: '1.5 m', duringTest: 'sealed' },
      },
    },
  });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  const { house } = parsed;
  const compiled = compileHouse(house);
  if (!compiled.ok) throw new Error(JSON.stringify(compiled.issues));
  const worstCase = await worstCaseStudy(compiled.compiled);
  const study = await combustionStudy(compiled.compiled, { worstCase, temperaturesC: [0] });
  const limitSet = limitSetById(set);
  if (limitSet === undefined) throw new Error(set);
  return judgeCombustion({ limitSet, house, study });
}

describe('a flue that the hood reverses', () => {
  let findings: readonly CombustionFinding[];
  beforeAll(async () => {
    findings = await findingsOf('300 L/s', 'spillage-and-co-2015');
  });

  it('is beyond the spillage times, from cold and from warm', () => {
    const times = findings.filter(({ about }) => about === 'spillage time');
    expect(times.length).toBeGreaterThanOrEqual(2);
    expect(new Set(times.map(({ finding }) => finding.verdict))).toEqual(
      new Set(['beyond the limit']),
    );
  });

  it('is held against every level of carbon monoxide, with the gas that was taken named', () => {
    const levels = findings.filter(({ about }) => about === 'carbon monoxide');
    expect(levels.length).toBeGreaterThanOrEqual(3);
    expect(levels[0]!.finding.notes.join(' ')).toContain('400 ppm');
    expect(levels[0]!.finding.subject).toBe('house');
  });

  it('has less draft than the programme by vent type asks', async () => {
    const [draft] = (await findingsOf('300 L/s', 'vent-type-table')).filter(
      ({ about }) => about === 'draft',
    );
    expect(draft!.finding.verdict).toBe('beyond the limit');
    expect(draft!.situation.label).toContain('hood');
  });
});

describe('a flue in a house whose hood is weak', () => {
  it('has the draft asked and does not spill; every finding says that a test decides', async () => {
    const findings = await findingsOf('10 L/s', 'vent-type-table');
    expect(findings.map(({ about }) => about)).not.toContain('carbon monoxide');
    const draft = findings.find(({ about }) => about === 'draft');
    expect(draft!.finding.verdict).toMatch(/within|near/);
    for (const { finding } of findings) {
      expect(finding.notes.at(-1)).toContain('a test on site decides');
    }
  });
});
