import { compileHouse } from '@evendraft/house';
import { readHouse } from '@evendraft/house/read';
import { cautions, defaultLimitSet, judge, judgingAssumptions } from '@evendraft/rules';
import { worstCaseStudy } from '@evendraft/studies';
import { beforeAll, describe, expect, it } from 'vitest';
import { assessmentSchema } from './assessment-schema.js';
import type { Assessment } from './assessment.js';
import { renderJson } from './render-json.js';
import { renderMarkdown } from './render-markdown.js';
import { renderTerminal } from './render-terminal.js';

/** Invented: a planned house of few lines, so that both ends of the range are in the assessment. */
const houseFile = `evendraft: 1
name: Sorrel Court 8
floorArea: 1640 ft2
volume: 13900 ft3
airtightness: 0.8 to 3 ACH50 (planned)
exhaust:
  hood: { low: 180 cfm, high: 600 cfm }
  dryer: 140 cfm
appliances:
  water heater: { vent: natural draft, input: 36 kBtu/h }
`;

async function assessedHouse(): Promise<Assessment> {
  const read = readHouse(houseFile, { file: 'sorrel-court.yaml' });
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const { house } = read;
  const compile = compileHouse(house);
  if (!compile.ok) throw new Error(JSON.stringify(compile.issues));
  const worstCase = await worstCaseStudy(compile.compiled);
  const findings = judge({ house, worstCase, limitSet: defaultLimitSet });
  const { name, floorAreaM2, volumeM3, digest, altitudeM, airtightness, weathers } = house;
  return {
    schema: 'evendraft-assessment',
    schemaVersion: 3,
    houseFindings: [],
    beside: [],
    cures: { status: 'nothing to cure' },
    screens: [],
    libraryVersion: '0.1.0',
    house: {
      name,
      floorAreaM2,
      volumeM3,
      digest,
      altitudeM,
      airtightness,
      weathers,
      zones: house.zones.map(({ id, kind }) => ({ id, kind })),
      devices: house.devices.map(({ id, kind, direction, zone }) => ({
        id,
        kind,
        direction,
        zone,
      })),
      appliances: house.appliances.map(({ id, kind, vent, zone }) => ({ id, kind, vent, zone })),
    },
    limitSet: {
      id: defaultLimitSet.id,
      name: defaultLimitSet.name,
      edition: defaultLimitSet.edition,
    },
    worstCase,
    findings,
    assumptions: [...house.assumptions, ...judgingAssumptions],
    notModelled: [],
    cautions: cautions(findings, house),
  };
}

describe('an assessment that the other packages made', () => {
  let assessment: Assessment;
  beforeAll(async () => {
    assessment = await assessedHouse();
  });

  it('is what the schema says, to the last key', () => {
    const checked = assessmentSchema.safeParse(JSON.parse(renderJson(assessment)));
    expect(checked.error?.issues ?? []).toEqual([]);
  });

  it('reads alike in the terminal and in the full report', () => {
    const { findings } = assessment;
    const margin = findings[0]?.judged?.marginPa;
    if (margin === undefined) throw new Error('the water heater is judged');
    const words = `${Math.abs(margin).toFixed(1)} Pa ${margin < 0 ? 'past' : 'short of'} it`;
    const oneLine = renderTerminal(assessment, { system: 'us' }).replace(/\s+/gu, ' ');
    expect(oneLine).toContain(words);
    expect(renderMarkdown(assessment, { system: 'us' })).toContain(words);
  });

  it('tells every assumption in the full report', () => {
    const text = renderMarkdown(assessment, { system: 'si' });
    const table = text.slice(text.indexOf('## Assumed'), text.indexOf('## Proof'));
    expect(assessment.assumptions.length).toBeGreaterThan(5);
    for (const { what } of assessment.assumptions) expect(table).toContain(`| ${what} |`);
  });

  it('names both ends of a planned range', () => {
    const text = renderTerminal(assessment, { system: 'us' }).replace(/\s+/gu, ' ');
    expect(text).toContain('(tight end)');
    expect(text).toContain('(loose end)');
  });
});
